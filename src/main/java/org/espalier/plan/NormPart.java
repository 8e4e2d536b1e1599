package org.espalier.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.espalier.kit.DateText;
import org.espalier.kit.Texts;
import org.espalier.kit.Who;
import org.espalier.prognosis.Ahead;
import org.espalier.science.alignment.NormCourse;
import org.espalier.science.alignment.NormForAge;
import org.espalier.science.alignment.NormQuantity;
import org.espalier.science.alignment.Quantity;
import org.espalier.science.quantity.Age;
import org.espalier.science.quantity.Sex;

/** The course of the age by the study that was chosen, then what every study says, each by its own method. */
record NormPart(Ahead ahead, LimbMeasures measures, SheetInputs inputs) {

    private static final int MONTHS = 18 * 12;

    /** A value of this child by the method and in the sign of a norm. */
    record Seen(LocalDate on, double value) {}

    List<Sheet.Part> parts() {
        var parts = new ArrayList<Sheet.Part>();
        NormChoice.of(inputs)
                .ifPresentOrElse(
                        choice -> parts.addAll(chosen(choice.course())),
                        () -> parts.add(new Sheet.Note(Texts.text("plan.norm.choose"))));
        parts.add(table(
                "plan.bow.norms",
                NormForAge.courses().stream().flatMap(this::row).toList()));
        return parts;
    }

    private List<Sheet.Part> chosen(NormCourse course) {
        var sex = sex();
        if (sex.isEmpty()) {
            return List.of(new Sheet.Note(Texts.text("plan.norm.no-sex")));
        }
        var seen = seen(course);
        var drawing = new NormDrawing(course, points(course, sex.get()), seen, measures.side(), this::age);
        var words = Texts.text(
                seen.isEmpty() ? "plan.norm.words.unmeasured" : "plan.norm.words",
                NormText.source(course),
                Texts.of(measures.side()));
        var heading = Texts.text("plan.norm.heading", Texts.text("plan.norm.quantity." + course.quantity()));
        return List.of(new Sheet.Drawing(heading, words, drawing::draw), table("plan.norm.latest", chosenRows(course)));
    }

    private List<List<String>> chosenRows(NormCourse course) {
        var rows = row(course).toList();
        var seen = seen(course);
        return rows.isEmpty()
                ? List.of(List.of(
                        Texts.text("plan.norm.quantity." + course.quantity()),
                        seen.isEmpty() ? Texts.text("plan.norm.not-measured") : measured(course, seen.getLast()),
                        NormText.source(course),
                        seen.isEmpty() ? "" : Texts.text("plan.norm.not-at-age"),
                        ""))
                : rows;
    }

    private String measured(NormCourse course, Seen seen) {
        return Texts.text(
                "plan.bow.value",
                NormText.value(course.quantity(), seen.value()),
                DateText.of(seen.on()),
                DateText.of(age(seen.on())));
    }

    private static List<NormDrawing.Point> points(NormCourse course, Sex sex) {
        return IntStream.rangeClosed(0, MONTHS)
                .boxed()
                .flatMap(month ->
                        course.at(sex, Age.ofMonths(month)).stream().map(norm -> new NormDrawing.Point(month, norm)))
                .toList();
    }

    private static Sheet.Part table(String heading, List<List<String>> rows) {
        return new Sheet.Table(
                Texts.text(heading),
                List.of(
                        Texts.text("plan.bow.angle"),
                        Texts.text("plan.bow.this-limb"),
                        Texts.text("plan.bow.study"),
                        Texts.text("plan.bow.printed"),
                        Texts.text("plan.bow.z")),
                rows.isEmpty() ? List.of(List.of(Texts.text("plan.norm.none"), "", "", "", "")) : rows);
    }

    /** The latest value beside what the study says of the age on that day. */
    private Stream<List<String>> row(NormCourse course) {
        var seen = seen(course);
        if (seen.isEmpty()) {
            return Stream.empty();
        }
        var last = seen.getLast();
        return sex().flatMap(sex -> course.at(sex, age(last.on()))).stream()
                .map(norm -> List.of(
                        Texts.text("plan.norm.quantity." + norm.quantity()),
                        measured(course, last),
                        NormText.source(norm),
                        NormText.printed(norm),
                        NormText.distance(norm, last.value())));
    }

    /** What was measured by the method of a study, the earliest first; methods are never mixed. */
    private List<Seen> seen(NormCourse course) {
        return switch (course.method()) {
            case CLINICAL -> course.quantity() == NormQuantity.KNEE_GAP ? gaps() : List.of();
            case ANATOMIC_FILM -> films(Quantity.ATFA);
            case MECHANICAL_FILM -> films(mechanical(course.quantity()));
        };
    }

    private static Quantity mechanical(NormQuantity quantity) {
        return switch (quantity) {
            case MLDFA -> Quantity.MLDFA;
            case MMPTA -> Quantity.MMPTA;
            case HKA, TIBIOFEMORAL, KNEE_GAP, AXIS_ANGLE -> Quantity.HKA;
        };
    }

    private List<Seen> films(Quantity quantity) {
        return ahead.films().of(measures.side(), quantity).stream()
                .map(film -> new Seen(film.on(), film.value()))
                .toList();
    }

    /** Positive between the ankles, negative between the knees. */
    private List<Seen> gaps() {
        var examination = ahead.examination();
        var ankles = examination.gapsOfAnkles().stream()
                .map(gap -> new Seen(gap.on(), gap.value().millimetres()));
        var knees = examination.gapsOfKnees().stream()
                .filter(gap -> gap.value().millimetres() > 0)
                .map(gap -> new Seen(gap.on(), -gap.value().millimetres()));
        return Stream.concat(ankles, knees)
                .sorted(Comparator.comparing(Seen::on))
                .toList();
    }

    private Optional<Sex> sex() {
        return Optional.ofNullable(who().sex());
    }

    private Age age(LocalDate day) {
        return who().ageOn(day);
    }

    private Who who() {
        return ahead.prognosis().child().who();
    }
}
