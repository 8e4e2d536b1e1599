package org.espalier.science.alignment;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.espalier.science.quantity.Age;
import org.espalier.science.quantity.PrintedTable;
import org.espalier.science.quantity.Sex;
import org.espalier.science.statistics.Interval;

/**
 * Printed norms by age and sex. Studies stand beside each other and are never averaged; methods are kept apart; where a
 * study printed nothing for an age there is no norm.
 *
 * <p>Rows hold for the completed months they name. Rows that are points of a drawn curve are joined by straight lines.
 */
public final class NormForAge {

    private record Row(Norm norm, Optional<Sex> sex, int fromMonths, int beforeMonths) {

        boolean isPoint() {
            return fromMonths == beforeMonths;
        }

        boolean isFor(Sex asked) {
            return sex.isEmpty() || sex.get() == asked;
        }

        boolean isFor(Age age) {
            return age.completedMonths() >= fromMonths && age.completedMonths() < beforeMonths;
        }
    }

    private static final List<Row> ROWS =
            Arrays.stream(NormMethod.values()).flatMap(NormForAge::read).toList();

    private NormForAge() {}

    /**
     * What every study says, in the order of the table.
     *
     * @param quantity what is asked
     * @param method how the child was measured
     * @param sex the child's
     * @param age on the day of measuring
     * @return empty where no study has a norm for this age
     */
    public static List<Norm> all(NormQuantity quantity, NormMethod method, Sex sex, Age age) {
        return NormStudy.all().stream()
                .flatMap(study -> of(study, quantity, method, sex, age).stream())
                .toList();
    }

    /** What each study printed, by what method: each can be chosen by itself, methods one after the other. */
    public static List<NormCourse> courses() {
        return ROWS.stream()
                .map(row -> new NormCourse(row.norm.study(), row.norm.quantity(), row.norm.method()))
                .filter(course -> course.quantity() != NormQuantity.AXIS_ANGLE)
                .distinct()
                .toList();
    }

    /** What the first study says that has a norm for this age; the same as the first of {@link #all}. */
    public static Optional<Norm> of(NormQuantity quantity, NormMethod method, Sex sex, Age age) {
        return all(quantity, method, sex, age).stream().findFirst();
    }

    /** What one study says. */
    public static Optional<Norm> of(NormStudy study, NormQuantity quantity, NormMethod method, Sex sex, Age age) {
        List<Row> rows = ROWS.stream()
                .filter(row -> row.norm.study().equals(study))
                .filter(row -> row.norm.quantity() == quantity && row.norm.method() == method && row.isFor(sex))
                .toList();
        Optional<Norm> span =
                rows.stream().filter(row -> row.isFor(age)).map(Row::norm).findFirst();
        return span.isPresent()
                ? span
                : onCurve(rows.stream().filter(Row::isPoint).toList(), age.decimalMonths());
    }

    /** The 95 % ranges of standing films that hold for both sexes, for the neutral band. */
    static Stream<NormalRange> bands() {
        return ROWS.stream()
                .filter(row -> row.norm.method() == NormMethod.MECHANICAL_FILM && row.sex.isEmpty())
                .flatMap(row -> row
                        .norm
                        .range()
                        .map(range -> new NormalRange(
                                Quantity.valueOf(row.norm.quantity().name()),
                                range.low(),
                                range.high(),
                                Age.ofMonths(row.fromMonths),
                                Age.ofMonths(row.beforeMonths),
                                row.norm.checking(),
                                source(row.norm)))
                        .stream());
    }

    private static String source(Norm norm) {
        String source =
                norm.study().citation() + ": 95 % range, " + norm.study().population();
        return norm.note().isEmpty() ? source : source + "; " + norm.note();
    }

    private static Optional<Norm> onCurve(List<Row> points, double months) {
        Optional<Row> younger =
                points.stream().filter(row -> row.fromMonths <= months).max(Comparator.comparingInt(Row::fromMonths));
        Optional<Row> older =
                points.stream().filter(row -> row.fromMonths >= months).min(Comparator.comparingInt(Row::fromMonths));
        return younger.flatMap(from -> older.map(to -> between(from, to, months)));
    }

    private static Norm between(Row from, Row to, double months) {
        int span = to.fromMonths - from.fromMonths;
        double part = span == 0 ? 0 : (months - from.fromMonths) / span;
        double start = from.norm.mean().orElseThrow();
        double end = to.norm.mean().orElseThrow();
        Norm norm = from.norm;
        return new Norm(
                norm.study(),
                norm.quantity(),
                norm.method(),
                OptionalDouble.of(start + part * (end - start)),
                norm.standardDeviation(),
                norm.range(),
                norm.note(),
                norm.checking());
    }

    private static Stream<Row> read(NormMethod method) {
        return PrintedTable.of(NormForAge.class, method.table()).rows().stream().map(row -> read(method, row));
    }

    private static Row read(NormMethod method, PrintedTable.Row row) {
        OptionalDouble low = number(row, "low");
        var norm = new Norm(
                NormStudy.ofCode(row.text("study")).orElseThrow(),
                NormQuantity.valueOf(row.text("quantity")),
                method,
                number(row, "mean"),
                number(row, "sd"),
                low.isPresent() ? Optional.of(new Interval(low.getAsDouble(), row.number("high"))) : Optional.empty(),
                row.text("note"),
                NormalRange.Checking.valueOf(row.text("checked").toUpperCase(Locale.ROOT)));
        Optional<Sex> sex =
                row.text("sex").equals("BOTH") ? Optional.empty() : Optional.of(Sex.valueOf(row.text("sex")));
        return new Row(norm, sex, (int) row.number("from_months"), (int) row.number("before_months"));
    }

    private static OptionalDouble number(PrintedTable.Row row, String column) {
        return row.text(column).isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(row.number(column));
    }
}
