package org.espalier.science.alignment;

import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.espalier.science.quantity.Age;
import org.espalier.science.quantity.PrintedTable;
import org.espalier.science.statistics.TwoByTwo;

/**
 * A published rule by which infantile tibia vara was told from bowing that straightens, and how often it was right.
 * Shown beside each other; none decides alone.
 *
 * @param rule the rule in the paper's terms
 * @param first the line to be beyond
 * @param also the other line to be beyond as well; empty for a rule of one index
 * @param from the first age the rule was made for; empty where it names none
 * @param before the age from which it was not made any more; empty where it names none
 * @param counts limbs: diseased are those of tibia vara, positive those the rule calls so; empty where none are printed
 * @param sensitivity 0 to 1; empty where not published
 * @param specificity 0 to 1; empty where not published
 * @param checking how far the figures have been checked
 * @param source where they were printed
 * @param note what has to stand beside it; empty if nothing
 */
public record PublishedCutoff(
        String rule,
        Threshold first,
        Optional<Threshold> also,
        Optional<Age> from,
        Optional<Age> before,
        Optional<TwoByTwo> counts,
        OptionalDouble sensitivity,
        OptionalDouble specificity,
        NormalRange.Checking checking,
        String source,
        String note) {

    private static final List<PublishedCutoff> ALL =
            PrintedTable.of(PublishedCutoff.class, "tibia-vara-cutoffs.csv").rows().stream()
                    .map(PublishedCutoff::of)
                    .toList();

    /** On which side of its threshold an index speaks for tibia vara. */
    public enum Line {
        ABOVE,
        AT_OR_ABOVE,
        BELOW
    }

    /** An index and the line it has to be beyond, in the index's unit. */
    public record Threshold(TibialIndex index, Line line, double value) {

        private boolean isPassedBy(double measured) {
            return switch (line) {
                case ABOVE -> measured > value;
                case AT_OR_ABOVE -> measured >= value;
                case BELOW -> measured < value;
            };
        }
    }

    /** Every rule, in the order of the table. */
    public static List<PublishedCutoff> all() {
        return ALL;
    }

    /** What the rule needs to be read on the film. */
    public Set<TibialIndex> indices() {
        var indices = EnumSet.of(first.index());
        also.ifPresent(other -> indices.add(other.index()));
        return indices;
    }

    /** Whether it was made for children of the age. */
    public boolean isFor(Age age) {
        return from.map(first -> age.compareTo(first) >= 0).orElse(true)
                && before.map(end -> age.compareTo(end) < 0).orElse(true);
    }

    /**
     * Whether the rule calls a limb tibia vara.
     *
     * @param measured by index, each in its unit
     * @return empty while an index is missing that could still change the answer
     */
    public Optional<Boolean> calls(Map<TibialIndex, Double> measured) {
        var one = isPassed(first, measured);
        if (also.isEmpty() || one.filter(passed -> !passed).isPresent()) {
            return one;
        }
        var other = isPassed(also.get(), measured);
        return other.filter(passed -> !passed).isPresent() || one.isPresent() ? other : Optional.empty();
    }

    /**
     * How many times likelier the rule's answer is in tibia vara than in bowing that straightens.
     *
     * @param called the answer
     * @return above 0, infinite where no straightening limb was called so; empty where a rate is not published
     */
    public OptionalDouble likelihoodRatio(boolean called) {
        if (sensitivity.isEmpty() || specificity.isEmpty()) {
            return OptionalDouble.empty();
        }
        double found = sensitivity.getAsDouble();
        double let = specificity.getAsDouble();
        return OptionalDouble.of(called ? found / (1 - let) : (1 - found) / let);
    }

    private static Optional<Boolean> isPassed(Threshold threshold, Map<TibialIndex, Double> measured) {
        return Optional.ofNullable(measured.get(threshold.index())).map(threshold::isPassedBy);
    }

    private static PublishedCutoff of(PrintedTable.Row row) {
        Optional<TwoByTwo> counts = row.text("tp").isEmpty()
                ? Optional.empty()
                : Optional.of(new TwoByTwo(count(row, "tp"), count(row, "fp"), count(row, "fn"), count(row, "tn")));
        return new PublishedCutoff(
                row.text("rule"),
                threshold(row, ""),
                row.text("also_index").isEmpty() ? Optional.empty() : Optional.of(threshold(row, "also_")),
                age(row, "from_months"),
                age(row, "before_months"),
                counts,
                counts.map(one -> OptionalDouble.of(one.sensitivity())).orElseGet(() -> part(row, "sensitivity")),
                counts.map(one -> OptionalDouble.of(one.specificity())).orElseGet(() -> part(row, "specificity")),
                NormalRange.Checking.valueOf(row.text("checked").toUpperCase(Locale.ROOT)),
                row.text("source"),
                row.text("note"));
    }

    private static Threshold threshold(PrintedTable.Row row, String which) {
        return new Threshold(
                TibialIndex.valueOf(row.text(which + "index")),
                Line.valueOf(row.text(which + "line").toUpperCase(Locale.ROOT)),
                row.number(which + "threshold"));
    }

    private static Optional<Age> age(PrintedTable.Row row, String column) {
        return row.text(column).isEmpty()
                ? Optional.empty()
                : Optional.of(Age.ofMonths(Integer.parseInt(row.text(column))));
    }

    private static OptionalDouble part(PrintedTable.Row row, String column) {
        return row.text(column).isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(row.number(column) / 100);
    }

    private static int count(PrintedTable.Row row, String column) {
        return Integer.parseInt(row.text(column));
    }
}
