package org.espalier.cost.internal;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Rows under headings.
 *
 * @param rows each as long as the headings; a cell is a text, a number, a day, or null for nothing
 */
record Sheet(String name, List<String> headings, List<List<@Nullable Object>> rows) {

    Sheet {
        headings = List.copyOf(headings);
        int width = headings.size();
        if (rows.stream().anyMatch(row -> row.size() != width)) {
            throw new IllegalArgumentException("a row is not as wide as its headings: " + width);
        }
    }
}
