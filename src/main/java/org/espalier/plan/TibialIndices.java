package org.espalier.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.espalier.kit.DateText;
import org.espalier.kit.Texts;
import org.espalier.prognosis.Ahead;
import org.espalier.prognosis.FilmAngle;
import org.espalier.reading.NumberText;
import org.espalier.science.alignment.FemoralTibialRatio;
import org.espalier.science.alignment.MetaphysealAngleGroups;
import org.espalier.science.alignment.PublishedCutoff;
import org.espalier.science.alignment.Quantity;
import org.espalier.science.alignment.TibialIndex;
import org.espalier.science.alignment.TibialShare;
import org.espalier.science.quantity.Age;
import org.espalier.science.quantity.Angle;

/** Indices of the proximal tibia, and what each study's own cut-off makes of them, with how often it was wrong. */
record TibialIndices(Ahead ahead, LimbMeasures measures) {

    private static final String NOTHING = "\u2013";

    /** A share of the tibia by either zero, as long as it is not known which one its study took. */
    private record Share(TibialShare.Zero zero, double percent) {}

    List<Sheet.Part> parts() {
        return List.of(values(), rules());
    }

    private Sheet.Part values() {
        var rows = new ArrayList<List<String>>();
        Stream.of(Quantity.MDA, Quantity.MDA_CORTEX, Quantity.EMA, Quantity.FMDA)
                .flatMap(quantity -> measures.latest(quantity).stream())
                .map(TibialIndices::row)
                .forEach(rows::add);
        mda().map(TibialIndices::curves).ifPresent(rows::add);
        ratio().ifPresent(ratio -> rows.add(
                List.of(Texts.text("plan.bow.ratio"), NumberText.plain(ratio), Texts.text("plan.bow.ratio.told"))));
        if (measures.latest(Quantity.MLDFA).isPresent()
                && measures.latest(Quantity.MMPTA).isPresent()) {
            Stream.of(TibialShare.Zero.values()).map(this::row).forEach(rows::add);
        }
        if (rows.isEmpty()) {
            rows.add(List.of(Texts.text("plan.bow.indices.none"), "", ""));
        }
        return new Sheet.Table(
                Texts.text("plan.bow.indices"),
                List.of(Texts.text("plan.bow.index"), Texts.text("plan.bow.this-limb"), Texts.text("plan.bow.known")),
                rows);
    }

    private List<String> row(TibialShare.Zero zero) {
        return List.of(
                Texts.text("plan.bow.share." + zero),
                shares().stream()
                        .filter(share -> share.zero() == zero)
                        .findFirst()
                        .map(share -> Texts.text("plan.bow.percent", share.percent()))
                        .orElseGet(() -> Texts.text("plan.bow.share.none")),
                Texts.text("plan.bow.share.told"));
    }

    private static List<String> row(FilmAngle film) {
        return List.of(
                Texts.text("plan.bow.index." + film.quantity()),
                Texts.text("plan.bow.read-on", NumberText.of(film.quantity(), film.value()), DateText.of(film.on())),
                Texts.text("plan.bow.told." + film.quantity()));
    }

    /** Where an angle lies between both groups that were drawn as curves. */
    private static List<String> curves(double degrees) {
        return List.of(
                Texts.text("plan.bow.curves"),
                Texts.text("plan.bow.zone." + MetaphysealAngleGroups.zone(degrees)),
                Texts.text(
                        "plan.bow.curves.told",
                        NumberText.of(Quantity.MDA, degrees),
                        100 * MetaphysealAngleGroups.PHYSIOLOGICAL.above(degrees),
                        100 * MetaphysealAngleGroups.TIBIA_VARA.below(degrees),
                        MetaphysealAngleGroups.likelihoodRatio(degrees)));
    }

    /** Every published rule: what it says of this limb, and how often it was wrong in saying so. */
    private Sheet.Part rules() {
        var rows = PublishedCutoff.all().stream().flatMap(this::rows).toList();
        return new Sheet.Table(
                Texts.text("plan.bow.rules"),
                List.of(
                        Texts.text("plan.bow.rule"),
                        Texts.text("plan.bow.call"),
                        Texts.text("plan.bow.wrong"),
                        Texts.text("plan.bow.likelihood"),
                        Texts.text("plan.bow.rates"),
                        Texts.text("plan.bow.study")),
                rows);
    }

    private Stream<List<String>> rows(PublishedCutoff rule) {
        var shares = shares();
        return rule.indices().contains(TibialIndex.SHARE) && !shares.isEmpty()
                ? shares.stream()
                        .map(share -> row(
                                rule,
                                Texts.text(
                                        "plan.bow.rule.zero", rule.rule(), Texts.text("plan.bow.zero." + share.zero())),
                                measured(Optional.of(share.percent()))))
                : Stream.of(row(rule, rule.rule(), measured(Optional.empty())));
    }

    private List<String> row(PublishedCutoff rule, String name, Map<TibialIndex, Double> measured) {
        var called = rule.calls(measured);
        var source = Texts.text("plan.bow.cited", rule.source(), Texts.text("plan.bow.checked." + rule.checking()));
        return List.of(
                name,
                call(rule, called),
                called.map(yes -> wrong(rule, yes)).orElse(NOTHING),
                called.map(yes -> likelihood(rule, yes)).orElse(NOTHING),
                Texts.text("plan.bow.rates.of", percent(rule.sensitivity()), percent(rule.specificity())),
                rule.note().isEmpty() ? source : Texts.text("plan.norm.noted", source, rule.note()));
    }

    private String call(PublishedCutoff rule, Optional<Boolean> called) {
        var words = called.map(yes -> Texts.text(yes ? "plan.bow.call.yes" : "plan.bow.call.no"))
                .orElseGet(() -> Texts.text("plan.bow.call.unread"));
        boolean outside = called.isPresent() && !age().map(rule::isFor).orElse(true);
        return outside ? Texts.text("plan.bow.call.other-age", words) : words;
    }

    /** How often the rule was wrong where it was made, among limbs it should have called the other way. */
    private static String wrong(PublishedCutoff rule, boolean called) {
        var rate = called ? rule.specificity() : rule.sensitivity();
        if (rate.isEmpty()) {
            return Texts.text("plan.bow.unpublished");
        }
        double share = 100 * (1 - rate.getAsDouble());
        return rule.counts()
                .map(counts -> called
                        ? Texts.text(
                                "plan.bow.wrong.alarm.of",
                                share,
                                counts.falsePositive(),
                                counts.falsePositive() + counts.trueNegative())
                        : Texts.text(
                                "plan.bow.wrong.missed.of",
                                share,
                                counts.falseNegative(),
                                counts.truePositive() + counts.falseNegative()))
                .orElseGet(() -> Texts.text(called ? "plan.bow.wrong.alarm" : "plan.bow.wrong.missed", share));
    }

    private static String likelihood(PublishedCutoff rule, boolean called) {
        var ratio = rule.likelihoodRatio(called);
        if (ratio.isEmpty()) {
            return Texts.text("plan.bow.unpublished");
        }
        return ratio.getAsDouble() == 0
                ? Texts.text("plan.bow.likelihood.nought")
                : Texts.text("plan.bow.likelihood.times", ratio.getAsDouble());
    }

    private static String percent(OptionalDouble part) {
        return part.isPresent()
                ? Texts.text("plan.bow.percent", 100 * part.getAsDouble())
                : Texts.text("plan.bow.unpublished");
    }

    private Map<TibialIndex, Double> measured(Optional<Double> share) {
        var measured = new EnumMap<TibialIndex, Double>(TibialIndex.class);
        mda().ifPresent(value -> measured.put(TibialIndex.MDA, value));
        measures.latest(Quantity.EMA).ifPresent(film -> measured.put(TibialIndex.EMA, film.value()));
        ratio().ifPresent(value -> measured.put(TibialIndex.RATIO, value));
        share.ifPresent(value -> measured.put(TibialIndex.SHARE, value));
        return measured;
    }

    /** By the mid-shaft line; to the lateral cortex where that alone was drawn. */
    private Optional<Double> mda() {
        return measures.latest(Quantity.MDA)
                .or(() -> measures.latest(Quantity.MDA_CORTEX))
                .map(FilmAngle::value);
    }

    private Optional<Double> ratio() {
        var ratio = measures.latest(Quantity.FMDA)
                .flatMap(femur -> measures.latest(Quantity.MDA)
                        .map(tibia -> FemoralTibialRatio.of(new Angle(femur.value()), new Angle(tibia.value()))))
                .orElse(OptionalDouble.empty());
        return ratio.isPresent() ? Optional.of(ratio.getAsDouble()) : Optional.empty();
    }

    private List<Share> shares() {
        return Stream.of(TibialShare.Zero.values())
                .flatMap(zero -> measures.latest(Quantity.MLDFA).stream()
                        .flatMap(femur -> measures.latest(Quantity.MMPTA).stream()
                                .flatMap(tibia -> share(zero, femur, tibia).stream())))
                .toList();
    }

    private static Optional<Share> share(TibialShare.Zero zero, FilmAngle femur, FilmAngle tibia) {
        var percent = TibialShare.percent(new Angle(femur.value()), new Angle(tibia.value()), zero);
        return percent.isPresent() ? Optional.of(new Share(zero, percent.getAsDouble())) : Optional.empty();
    }

    /** On the latest film that any index was read on. */
    private Optional<Age> age() {
        return Stream.of(Quantity.MDA, Quantity.MDA_CORTEX, Quantity.EMA, Quantity.MMPTA)
                .flatMap(quantity -> measures.latest(quantity).stream())
                .map(FilmAngle::on)
                .max(LocalDate::compareTo)
                .map(ahead.prognosis().child().who()::ageOn);
    }
}
