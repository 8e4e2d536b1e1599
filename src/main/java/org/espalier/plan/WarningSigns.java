package org.espalier.plan;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.espalier.kit.DateText;
import org.espalier.kit.QuantityText;
import org.espalier.kit.Texts;
import org.espalier.kit.Who;
import org.espalier.patient.BodySize;
import org.espalier.patient.Dated;
import org.espalier.patient.Diagnosis;
import org.espalier.patient.LegAnswer;
import org.espalier.patient.LegSign;
import org.espalier.prognosis.Ahead;
import org.espalier.prognosis.FilmAngle;
import org.espalier.reading.NumberText;
import org.espalier.science.alignment.Quantity;
import org.espalier.science.growth.BodyMassIndex;
import org.espalier.science.quantity.Age;
import org.espalier.science.quantity.Side;

/** Signs that speak against a bow of the age, each beside what is on record of it; none is judged here. */
record WarningSigns(Ahead ahead, LimbMeasures measures) {

    private static final Age TWO = Age.ofYears(2);

    Sheet.Part part() {
        var record = List.of(bothLegs(), afterTwo(), bendAndThrust(), bone(), weight(), pain());
        var rows = IntStream.range(0, record.size())
                .mapToObj(i -> List.of(
                        Texts.text("plan.bow.warning." + (i + 1)),
                        record.get(i).orElseGet(() -> Texts.text("plan.bow.warning.unrecorded"))))
                .toList();
        return new Sheet.Table(
                Texts.text("plan.bow.warnings"),
                List.of(Texts.text("plan.bow.warning"), Texts.text("plan.bow.on-record")),
                rows);
    }

    private Optional<String> bothLegs() {
        return joined(Stream.of(Side.RIGHT, Side.LEFT).flatMap(side -> ahead.films().latest(side, Quantity.HKA).stream()
                .map(film -> Texts.text("plan.bow.warning.leg", Texts.of(side), hka(film), DateText.of(film.on())))));
    }

    private Optional<String> afterTwo() {
        var films = ahead.films().of(measures.side(), Quantity.HKA).stream()
                .filter(film -> who().ageOn(film.on()).compareTo(TWO) >= 0)
                .toList();
        return joined(films.subList(Math.max(0, films.size() - 2), films.size()).stream()
                .map(film -> Texts.text("plan.bow.warning.at-age", hka(film), DateText.of(who().ageOn(film.on())))));
    }

    private Optional<String> bendAndThrust() {
        var bend = measures.latest(Quantity.MDA)
                .or(() -> measures.latest(Quantity.MDA_CORTEX))
                .map(film -> Texts.text(
                        "plan.bow.warning.bend", NumberText.of(film.quantity(), film.value()), DateText.of(film.on())));
        return joined(Stream.concat(bend.stream(), sign(LegSign.THRUST, "plan.bow.warning.thrust").stream()));
    }

    private Optional<String> bone() {
        var diagnoses = ahead.examination().diagnoses().findings().stream()
                .filter(WarningSigns::isOfBone)
                .map(one -> Texts.text("plan.knock.on", Texts.of(one.kind()), DateText.of(one.on())));
        var height = ahead.examination().sizes().findings().reversed().stream()
                .filter(size -> size.height() != null)
                .findFirst()
                .map(WarningSigns::height);
        return joined(Stream.concat(diagnoses, height.stream()));
    }

    private static boolean isOfBone(Diagnosis diagnosis) {
        return switch (diagnosis.kind()) {
            case RICKETS_NUTRITIONAL, RICKETS_HYPOPHOSPHATAEMIC, RICKETS_OTHER, RENAL, SKELETAL_DYSPLASIA -> true;
            default -> false;
        };
    }

    private static String height(BodySize size) {
        return Optional.ofNullable(size.height())
                .map(height ->
                        Texts.text("plan.bow.warning.height", QuantityText.ofHeight(height), DateText.of(size.on())))
                .orElse("");
    }

    private Optional<String> weight() {
        return ahead.examination().sizes().findings().reversed().stream()
                .flatMap(size -> size.index().stream().map(index -> weight(size.on(), index)))
                .findFirst();
    }

    private static String weight(LocalDate on, BodyMassIndex index) {
        return Texts.text(
                "plan.bow.warning.index", QuantityText.ofIndex(index.kilogramsPerSquareMetre()), DateText.of(on));
    }

    private Optional<String> pain() {
        return sign(LegSign.PAIN, "plan.bow.warning.pain");
    }

    private Optional<String> sign(LegSign sign, String key) {
        List<Dated<LegAnswer>> answers = ahead.examination().answers(measures.side(), sign);
        return answers.isEmpty()
                ? Optional.empty()
                : Optional.of(Texts.text(
                        key,
                        Texts.text("plan.answer." + answers.getLast().value().name()),
                        DateText.of(answers.getLast().on())));
    }

    private static String hka(FilmAngle film) {
        return NumberText.of(Quantity.HKA, film.value());
    }

    private static Optional<String> joined(Stream<String> facts) {
        var words = facts.collect(Collectors.joining("; "));
        return words.isEmpty() ? Optional.empty() : Optional.of(words);
    }

    private Who who() {
        return ahead.prognosis().child().who();
    }
}
