package org.espalier.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.espalier.kit.DateText;
import org.espalier.kit.Texts;
import org.espalier.kit.Who;
import org.espalier.prognosis.Ahead;
import org.espalier.prognosis.FilmAngle;
import org.espalier.prognosis.NaturalOutlook;
import org.espalier.science.alignment.Norm;
import org.espalier.science.alignment.NormForAge;
import org.espalier.science.alignment.NormMethod;
import org.espalier.science.alignment.NormQuantity;
import org.espalier.science.alignment.PublishedCutoff;
import org.espalier.science.alignment.Quantity;
import org.espalier.science.quantity.Age;
import org.espalier.science.quantity.Side;

/** Is it physiological? What each study says of this limb, each by its own method, and what they leave open. */
final class BowSheet {

    private static final int WARNINGS = 6;
    private static final int OPEN = 5;

    private final Ahead ahead;
    private final Side side;
    private final LimbMeasures measures;

    BowSheet(Ahead ahead, Side side) {
        this.ahead = ahead;
        this.side = side;
        measures = new LimbMeasures(ahead, side);
    }

    Sheet sheet() {
        var parts = new ArrayList<Sheet.Part>();
        parts.add(norms());
        parts.add(new TibialIndices(measures).part());
        parts.add(rules());
        parts.add(trend());
        parts.add(new KnockKnees(ahead, measures).part());
        parts.add(list("plan.bow.warnings", "plan.bow.warning.", WARNINGS));
        parts.add(list("plan.bow.open", "plan.bow.open.", OPEN));
        parts.addAll(new StagePart(ahead, side).parts());
        return new Sheet(
                SheetKind.BOW,
                ahead.prognosis().child().who(),
                ahead.today(),
                side,
                Texts.text("plan.bow.title", Texts.of(side)),
                parts,
                List.of(Texts.text("plan.bow.caution.1"), Texts.text("plan.bow.caution.2")));
    }

    private static Sheet.Part list(String heading, String key, int count) {
        return new Sheet.Table(
                Texts.text(heading),
                List.of(),
                IntStream.rangeClosed(1, count)
                        .mapToObj(i -> List.of(Texts.text(key + i)))
                        .toList());
    }

    /** The latest reading of each angle beside every study that has a norm for the age on that film. */
    private Sheet.Part norms() {
        var rows = Stream.of(
                        rows(Quantity.ATFA, NormQuantity.TIBIOFEMORAL, NormMethod.ANATOMIC_FILM),
                        rows(Quantity.HKA, NormQuantity.HKA, NormMethod.MECHANICAL_FILM),
                        rows(Quantity.MLDFA, NormQuantity.MLDFA, NormMethod.MECHANICAL_FILM),
                        rows(Quantity.MMPTA, NormQuantity.MMPTA, NormMethod.MECHANICAL_FILM))
                .flatMap(some -> some)
                .toList();
        return new Sheet.Table(
                Texts.text("plan.bow.norms"),
                List.of(
                        Texts.text("plan.bow.angle"),
                        Texts.text("plan.bow.this-limb"),
                        Texts.text("plan.bow.study"),
                        Texts.text("plan.bow.printed"),
                        Texts.text("plan.bow.z")),
                rows);
    }

    private Stream<List<String>> rows(Quantity quantity, NormQuantity of, NormMethod method) {
        return measures.latest(quantity).stream().flatMap(film -> ahead.prognosis().age().stream()
                .flatMap(age -> NormForAge.all(of, method, age.sex(), ageOn(film.on())).stream())
                .map(norm -> row(film, norm)));
    }

    private List<String> row(FilmAngle film, Norm norm) {
        return List.of(
                Texts.text("plan.bow.quantity." + film.quantity().name()),
                Texts.text("plan.bow.value", film.value(), DateText.of(film.on()), DateText.of(ageOn(film.on()))),
                Texts.text(
                        "plan.bow.source",
                        norm.study().citation(),
                        norm.study().population(),
                        Texts.text("plan.bow.method." + norm.method().name()),
                        Texts.text("plan.bow.checked." + norm.checking().name())),
                printed(norm),
                told(norm.z(film.value()), "plan.bow.z.value", "plan.bow.z.none"));
    }

    private static String printed(Norm norm) {
        var range = norm.range()
                .map(interval -> Texts.text("plan.bow.range", interval.low(), interval.high()))
                .orElse("");
        return norm.mean().isPresent()
                ? Texts.text(
                        "plan.bow.mean",
                        norm.mean().getAsDouble(),
                        told(norm.standardDeviation(), "plan.bow.sd", "plan.bow.sd.none"),
                        range)
                : range;
    }

    private static String told(OptionalDouble value, String key, String none) {
        return value.isPresent() ? Texts.text(key, value.getAsDouble()) : Texts.text(none);
    }

    /** Every published rule with how often it was right where it was made. */
    private static Sheet.Part rules() {
        return new Sheet.Table(
                Texts.text("plan.bow.rules"),
                List.of(
                        Texts.text("plan.bow.rule"),
                        Texts.text("plan.bow.sensitivity"),
                        Texts.text("plan.bow.specificity"),
                        Texts.text("plan.bow.wrong"),
                        Texts.text("plan.bow.study")),
                PublishedCutoff.all().stream().map(BowSheet::rule).toList());
    }

    private static List<String> rule(PublishedCutoff cutoff) {
        var counts = cutoff.counts();
        return List.of(
                cutoff.rule(),
                Texts.text("plan.bow.percent", 100 * counts.sensitivity()),
                Texts.text("plan.bow.percent", 100 * counts.specificity()),
                Texts.text(
                        "plan.bow.wrong.of",
                        counts.falsePositive(),
                        counts.truePositive() + counts.falsePositive(),
                        counts.falseNegative(),
                        counts.falseNegative() + counts.trueNegative()),
                Texts.text(
                        "plan.bow.cited",
                        cutoff.source(),
                        Texts.text("plan.bow.checked." + cutoff.checking().name())));
    }

    private Sheet.Part trend() {
        var facts = new Sheet.Gathered();
        fallOfMda()
                .ifPresentOrElse(
                        fall -> facts.with("plan.bow.trend.mda", fall),
                        () -> facts.with("plan.bow.trend.mda", Texts.text("plan.bow.trend.one-film")));
        ahead.prognosis()
                .natural(side)
                .flatMap(NaturalOutlook::trend)
                .ifPresent(trend -> facts.with(
                        "plan.bow.trend.shafts",
                        Texts.text(
                                "plan.bow.trend.turn",
                                DateText.of(trend.from()),
                                PlanText.deviation(-trend.seen()),
                                PlanText.deviation(-trend.expected()))));
        return facts.under("plan.bow.trend");
    }

    /** Per six months between the last two films that lie three months and more apart. */
    private Optional<String> fallOfMda() {
        List<FilmAngle> films = ahead.films().of(side, Quantity.MDA);
        return films.isEmpty()
                ? Optional.empty()
                : films.stream()
                        .filter(film -> !film.on().isAfter(films.getLast().on().minusMonths(3)))
                        .reduce((earlier, later) -> later)
                        .map(earlier -> fall(earlier, films.getLast()));
    }

    private static String fall(FilmAngle earlier, FilmAngle last) {
        double halfYears = java.time.temporal.ChronoUnit.DAYS.between(earlier.on(), last.on()) / 182.625;
        return Texts.text(
                "plan.bow.trend.fall",
                earlier.value(),
                DateText.of(earlier.on()),
                last.value(),
                DateText.of(last.on()),
                (earlier.value() - last.value()) / halfYears);
    }

    private Age ageOn(LocalDate day) {
        return switch (ahead.prognosis().child().who()) {
            case Who.Named named -> Age.between(named.birthDate(), day);
            case Who.Initialled initialled ->
                Age.between(initialled.birthMonth().atDay(1), day);
        };
    }
}
