package org.espalier.plan;

import java.util.List;
import java.util.Map;

/**
 * One option in words, as it is shown and as it is kept: each heading with its lines.
 *
 * @param lines by column; a column without lines has nothing to say
 */
public record OptionCells(Option option, Map<Column, List<String>> lines) {

    /** What stands beside each option, in this order. */
    public enum Column {
        COURSE,
        TARGET,
        WINDOW,
        TAKES,
        REBOUND,
        COMPLICATIONS,
        COST,
        LENGTH,
        FLAGS,
        EVIDENCE
    }

    /** Columns that are read together, in one cell of a table. */
    private static final List<List<Column>> GROUPS = List.of(
            List.of(Column.COURSE, Column.TARGET, Column.WINDOW),
            List.of(Column.TAKES, Column.COST, Column.LENGTH),
            List.of(Column.REBOUND, Column.COMPLICATIONS),
            List.of(Column.FLAGS, Column.EVIDENCE));

    public OptionCells {
        lines = Map.copyOf(lines);
    }

    /** The cells of one row, each with its columns. */
    public static List<List<Column>> groups() {
        return GROUPS;
    }

    public List<String> of(Column column) {
        return lines.getOrDefault(column, List.of());
    }
}
