package org.espalier.plan;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.espalier.science.quantity.PrintedTable;

/**
 * What one publication says of an option.
 *
 * @param range the printed figure with its range
 * @param n how many, with what was counted
 * @param level as graded; "not graded" else
 * @param checked whether it was read, quoted elsewhere, from memory, or is common practice
 */
public record Claim(
        Option option,
        Aspect aspect,
        Stands stands,
        String claim,
        String range,
        String study,
        String n,
        String design,
        String level,
        Checked checked) {

    /** What it is about. */
    public enum Aspect {
        COURSE,
        REBOUND,
        COMPLICATION
    }

    /** Which way it points. */
    public enum Stands {
        FOR,
        AGAINST,
        OPEN
    }

    /** How far it was checked. */
    public enum Checked {
        READ,
        SECONDARY,
        MEMORY,
        PRACTICE
    }

    private static final List<Claim> ALL = PrintedTable.of(Claim.class, "evidence.csv").rows().stream()
            .map(Claim::of)
            .toList();

    /** All of them, in the order of the options. */
    public static List<Claim> all() {
        return ALL;
    }

    /** Those on one aspect of an option, for before against before what is left open; empty means no evidence here. */
    public static List<Claim> on(Option option, Aspect aspect) {
        return Arrays.stream(Stands.values())
                .flatMap(stands -> ALL.stream().filter(claim -> claim.stands == stands))
                .filter(claim -> claim.option == option && claim.aspect == aspect)
                .toList();
    }

    private static Claim of(PrintedTable.Row row) {
        return new Claim(
                Option.valueOf(row.text("option")),
                Aspect.valueOf(row.text("aspect")),
                Stands.valueOf(row.text("stands")),
                row.text("claim"),
                row.text("range"),
                row.text("study"),
                row.text("n"),
                row.text("design"),
                row.text("level"),
                Checked.valueOf(row.text("checked").toUpperCase(Locale.ROOT)));
    }
}
