package org.espalier.prognosis;

import java.time.LocalDate;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.espalier.science.alignment.Quantity;
import org.espalier.science.forecast.Cause;
import org.espalier.science.forecast.Deformity;
import org.espalier.science.forecast.NaturalCourse;
import org.espalier.science.forecast.Spread;
import org.espalier.science.quantity.Age;
import org.espalier.science.quantity.Angle;
import org.espalier.science.quantity.Sex;
import org.espalier.science.quantity.Side;

/**
 * Where a young child's limb goes by itself while nothing ever held it: by the place of its shaft angle among children
 * of its age. Angles are positive in varus. It does not hold for tibia vara and bone disease.
 */
public final class NaturalOutlook {

    /** A limb that falls so many degrees in six months behind the course of its age is pointed out (judged). */
    public static final double LAG_POINTED_OUT = 3;

    /** From this age on the angle changes by itself next to nothing. */
    private static final Age STRAIGHTENED = Age.ofYears(7);

    private static final Set<Cause> NATURAL = EnumSet.of(Cause.IDIOPATHIC_VARUS, Cause.IDIOPATHIC_VALGUS);
    private static final double[] SHOWN = {0.05, 0.25, 0.5, 0.75, 0.95};
    private static final double HALF_A_YEAR = 6;
    private static final int LEAST_MONTHS_APART = 3;
    private static final int MOST_MONTHS_APART = 18;

    private final Side side;
    private final Sex sex;
    private final LocalDate birth;
    private final List<FilmAngle> films;

    private NaturalOutlook(Side side, Sex sex, LocalDate birth, List<FilmAngle> films) {
        this.side = side;
        this.sex = sex;
        this.birth = birth;
        this.films = films;
    }

    /**
     * What two films say beside the course of the age, each in degrees towards valgus in six months.
     *
     * @param from the day of the earlier film
     * @param seen by the films
     * @param expected by the course of the age from the earlier film
     */
    public record Trend(LocalDate from, double seen, double expected) {

        /** Whether the limb falls behind: it keeps its bow, or bends further, where others straighten. */
        public boolean isBehind() {
            return expected - seen > LAG_POINTED_OUT;
        }
    }

    /** Empty from seven years on, without a shaft angle, and for limbs that are held, were held or are ill. */
    static Optional<NaturalOutlook> of(ChildFacts facts, Side side) {
        List<FilmAngle> films = facts.films().of(side, Quantity.ATFA);
        boolean young = Age.between(facts.birth(), facts.today()).compareTo(STRAIGHTENED) < 0;
        return young && !films.isEmpty() && !wasHeld(facts, side) && isNatural(facts, side)
                ? facts.sex()
                        .map(sex -> new NaturalOutlook(side, sex, facts.birth(), films))
                        .filter(natural ->
                                natural.later(natural.last(), facts.today()).isPresent())
                : Optional.empty();
    }

    private static boolean wasHeld(ChildFacts facts, Side side) {
        return facts.treatment().physes().stream()
                .anyMatch(one -> one.physis().side() == side && !one.tethers().isEmpty());
    }

    private static boolean isNatural(ChildFacts facts, Side side) {
        var standing = facts.examination().diagnoses().standing();
        return Stream.of(Deformity.values())
                .allMatch(
                        bend -> NATURAL.contains(Causes.of(standing, side, bend).cause()));
    }

    public Side side() {
        return side;
    }

    /** The angle of the shafts as last read, + varus. */
    public Angle lastAngle() {
        return new Angle(-last().value());
    }

    /** The day of that film. */
    public LocalDate lastOn() {
        return last().on();
    }

    /** How many standard deviations the limb lay on the bowed side of the mean of its age on that film. */
    public double place() {
        return -NaturalCourse.place(sex, age(lastOn()), new Angle(last().value()))
                .orElseThrow();
    }

    /** How the angle is spread on a day, if the limb follows the course of its age; before the last film as on it. */
    public AngleSpread angle(LocalDate day) {
        return AngleSpread.of(later(last(), day).orElseThrow().scaled(-1, 0).quantiles(SHOWN));
    }

    /** Degrees towards valgus that the course of the age brings in the six months after a day. */
    public double turnInSixMonths(LocalDate day) {
        return angle(day)
                .middle()
                .minus(angle(day.plusMonths((int) HALF_A_YEAR)).middle())
                .degrees();
    }

    /** Beside the latest film at least three months and at most a year and a half before the last. */
    public Optional<Trend> trend() {
        return films.stream()
                .filter(film -> !film.on().isAfter(lastOn().minusMonths(LEAST_MONTHS_APART)))
                .filter(film -> !film.on().isBefore(lastOn().minusMonths(MOST_MONTHS_APART)))
                .reduce((earlier, later) -> later)
                .flatMap(this::since);
    }

    private Optional<Trend> since(FilmAngle earlier) {
        double perHalfYear = HALF_A_YEAR / ForecastInputs.monthsBetween(earlier.on(), lastOn());
        return later(earlier, lastOn())
                .map(now -> new Trend(
                        earlier.on(),
                        (last().value() - earlier.value()) * perHalfYear,
                        (now.mean() - earlier.value()) * perHalfYear));
    }

    private FilmAngle last() {
        return films.getLast();
    }

    private Optional<Spread> later(FilmAngle film, LocalDate day) {
        return NaturalCourse.tibiofemoral(
                sex, age(film.on()), new Angle(film.value()), age(day.isBefore(film.on()) ? film.on() : day));
    }

    private Age age(LocalDate day) {
        return Age.between(birth, day);
    }
}
