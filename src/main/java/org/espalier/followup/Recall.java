package org.espalier.followup;

import java.util.List;

/**
 * A page of the recall.
 *
 * @param all how many children are late or without a date in all
 */
public record Recall(List<RecallLine> lines, long all) {

    public Recall {
        lines = List.copyOf(lines);
    }
}
