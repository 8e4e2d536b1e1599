package org.espalier.science.alignment;

import java.util.List;
import java.util.Locale;
import org.espalier.science.quantity.PrintedTable;
import org.espalier.science.statistics.TwoByTwo;

/**
 * A published rule by which infantile tibia vara was told from bowing that straightens, and how often it was right. Shown
 * beside each other; none decides alone.
 *
 * @param rule the rule in the paper's terms
 * @param counts limbs: diseased are those of tibia vara, positive those the rule calls so
 * @param checking how far the counts have been checked
 * @param source where they were printed
 */
public record PublishedCutoff(String rule, TwoByTwo counts, NormalRange.Checking checking, String source) {

    private static final List<PublishedCutoff> ALL =
            PrintedTable.of(PublishedCutoff.class, "tibia-vara-cutoffs.csv").rows().stream()
                    .map(PublishedCutoff::of)
                    .toList();

    /** Every rule with counts, in the order of the table. */
    public static List<PublishedCutoff> all() {
        return ALL;
    }

    private static PublishedCutoff of(PrintedTable.Row row) {
        return new PublishedCutoff(
                row.text("rule"),
                new TwoByTwo(count(row, "tp"), count(row, "fp"), count(row, "fn"), count(row, "tn")),
                NormalRange.Checking.valueOf(row.text("checked").toUpperCase(Locale.ROOT)),
                row.text("source"));
    }

    private static int count(PrintedTable.Row row, String column) {
        return Integer.parseInt(row.text(column));
    }
}
