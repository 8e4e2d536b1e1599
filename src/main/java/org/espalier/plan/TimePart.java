package org.espalier.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import org.espalier.kit.DateText;
import org.espalier.kit.QuantityText;
import org.espalier.kit.Texts;
import org.espalier.patient.Dated;
import org.espalier.patient.LegAngle;
import org.espalier.patient.LegAnswer;
import org.espalier.patient.LegSign;
import org.espalier.prognosis.Ahead;
import org.espalier.prognosis.FilmAngle;
import org.espalier.science.alignment.Quantity;
import org.espalier.science.quantity.Angle;
import org.espalier.science.quantity.Side;

/** Torsion, thrust, laxity and length beside the angle over time: as lines above each other, then by day. */
record TimePart(Ahead ahead, Side side) {

    List<Sheet.Part> parts() {
        var parts = new ArrayList<Sheet.Part>();
        var drawing = drawing();
        if (drawing.isPossible()) {
            parts.add(new Sheet.Drawing(
                    Texts.text("plan.time.heading", Texts.of(side)),
                    Texts.text("plan.time.words", Texts.of(side)),
                    drawing::draw));
        }
        parts.add(table());
        return parts;
    }

    private TimeDrawing drawing() {
        return new TimeDrawing(
                side,
                List.of(
                        new TimeDrawing.Panel(
                                Texts.text("plan.time.hka"),
                                Texts.text("kit.Deformity.VARUS"),
                                Texts.text("kit.Deformity.VALGUS"),
                                "plan.chart.axis",
                                points(angles(), FilmAngle::on, FilmAngle::value)),
                        new TimeDrawing.Panel(
                                Texts.text("plan.length.thigh-foot"),
                                Texts.text("plan.time.outward"),
                                Texts.text("plan.time.inward"),
                                "plan.chart.axis",
                                points(torsion(), Dated::on, one -> one.value().degrees())),
                        new TimeDrawing.Panel(
                                Texts.text("plan.time.length"),
                                Texts.text("plan.time.right"),
                                Texts.text("plan.time.left"),
                                "plan.norm.axis.mm",
                                points(lengths(), Dated::on, Dated::value))),
                List.of(
                        new TimeDrawing.Signs(Texts.text("plan.length.thrust"), signs(LegSign.THRUST)),
                        new TimeDrawing.Signs(Texts.text("plan.length.laxity"), signs(LegSign.LATERAL_LAXITY))));
    }

    private static <T> List<TimeDrawing.Point> points(
            List<T> series, Function<T, LocalDate> on, ToDoubleFunction<T> value) {
        return series.stream()
                .map(one -> new TimeDrawing.Point(on.apply(one), value.applyAsDouble(one)))
                .toList();
    }

    private List<Dated<String>> signs(LegSign sign) {
        return answers(sign).stream()
                .map(one -> new Dated<>(one.on(), answer(one.value())))
                .toList();
    }

    private Sheet.Part table() {
        var rows = days().reversed().stream()
                .map(day -> List.of(
                        DateText.of(day),
                        angles().stream()
                                .filter(film -> film.on().equals(day))
                                .findFirst()
                                .map(film -> QuantityText.ofDeviation(Angle.ofDegrees(film.value())))
                                .orElse(""),
                        on(torsion(), day).map(TimePart::torsion).orElse(""),
                        on(lengths(), day).map(TimePart::difference).orElse(""),
                        on(answers(LegSign.THRUST), day).map(TimePart::answer).orElse(""),
                        on(answers(LegSign.LATERAL_LAXITY), day)
                                .map(TimePart::answer)
                                .orElse("")))
                .toList();
        return new Sheet.Table(
                Texts.text("plan.length.time"),
                List.of(
                        Texts.text("plan.growth.day"),
                        Texts.text("plan.length.hka"),
                        Texts.text("plan.length.thigh-foot"),
                        Texts.text("plan.time.length"),
                        Texts.text("plan.length.thrust"),
                        Texts.text("plan.length.laxity")),
                rows.isEmpty() ? List.of(List.of(Texts.text("plan.time.none"), "", "", "", "", "")) : rows);
    }

    private SortedSet<LocalDate> days() {
        var days = new TreeSet<LocalDate>();
        Stream.of(torsion(), answers(LegSign.THRUST), answers(LegSign.LATERAL_LAXITY), lengths())
                .flatMap(List::stream)
                .map(Dated::on)
                .forEach(days::add);
        angles().forEach(film -> days.add(film.on()));
        return days;
    }

    private List<FilmAngle> angles() {
        return ahead.films().of(side, Quantity.HKA);
    }

    private List<Dated<Angle>> torsion() {
        return ahead.examination().angles(side, LegAngle.THIGH_FOOT);
    }

    private List<Dated<LegAnswer>> answers(LegSign sign) {
        return ahead.examination().answers(side, sign);
    }

    /** Femur and tibia together, right less left, of films on which all four bones were read. */
    private List<Dated<Double>> lengths() {
        return ahead.films().of(Side.RIGHT, Quantity.FEMUR_LENGTH).stream()
                .map(FilmAngle::on)
                .flatMap(day -> leg(Side.RIGHT, day)
                        .flatMap(right -> leg(Side.LEFT, day).map(left -> new Dated<>(day, right - left)))
                        .stream())
                .toList();
    }

    private Optional<Double> leg(Side which, LocalDate day) {
        return bone(which, Quantity.FEMUR_LENGTH, day)
                .flatMap(femur -> bone(which, Quantity.TIBIA_LENGTH, day).map(tibia -> femur + tibia));
    }

    private Optional<Double> bone(Side which, Quantity quantity, LocalDate day) {
        return ahead.films().of(which, quantity).stream()
                .filter(film -> film.on().equals(day))
                .map(FilmAngle::value)
                .findFirst();
    }

    private static String difference(double rightLonger) {
        return Math.round(rightLonger) == 0
                ? Texts.text("plan.time.equal")
                : Texts.text(
                        rightLonger > 0 ? "plan.time.right-longer" : "plan.time.left-longer", Math.abs(rightLonger));
    }

    private static String answer(LegAnswer answer) {
        return Texts.text("plan.answer." + answer.name());
    }

    private static <T> Optional<T> on(List<Dated<T>> series, LocalDate day) {
        return series.stream()
                .filter(one -> one.on().equals(day))
                .map(Dated::value)
                .findFirst();
    }

    private static String torsion(Angle angle) {
        return Texts.text(
                angle.degrees() >= 0 ? "plan.length.outward" : "plan.length.inward", Math.abs(angle.degrees()));
    }
}
