package org.espalier.course;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.espalier.followup.Closing;
import org.espalier.followup.Visit;
import org.espalier.kit.CourseModel;
import org.espalier.kit.DateText;
import org.espalier.kit.QuantityText;
import org.espalier.kit.Texts;
import org.espalier.kit.Urls;
import org.espalier.patient.BodySize;
import org.espalier.patient.BoneAge;
import org.espalier.patient.Fact;
import org.jspecify.annotations.Nullable;

/** What happened besides films, one row each along the foot of the chart. Rows without a mark are left out. */
final class CourseRows {

    private final Course course;

    private CourseRows(Course course) {
        this.course = course;
    }

    static List<CourseModel.Row> of(Course course) {
        var rows = new CourseRows(course);
        return Stream.concat(
                        TreatmentRows.of(course.treatment(), course.screws()),
                        Stream.of(rows.visits(), rows.examinations(), rows.boneAges()))
                .filter(row -> !row.marks().isEmpty())
                .toList();
    }

    private CourseModel.Row visits() {
        return row(
                "visits",
                course.visits().all().stream()
                        .sorted(Comparator.comparing(Visit::day))
                        .map(this::visit));
    }

    private CourseModel.Row examinations() {
        return row("examined", course.examination().sizes().standing().stream().map(this::size));
    }

    private CourseModel.Row boneAges() {
        return row(
                "bone-age", course.examination().boneAges().standing().stream().map(this::boneAge));
    }

    private CourseModel.Row row(String id, Stream<CourseModel.Mark> marks) {
        return new CourseModel.Row(id, Texts.text("course.row." + id), null, marks.toList());
    }

    private CourseModel.Mark visit(Visit visit) {
        var look =
                switch (visit.state()) {
                    case ARRIVED, CARE_ENDED -> CourseModel.Look.VISIT;
                    case NOT_BROUGHT, CANCELLED -> CourseModel.Look.VISIT_MISSED;
                    case PLANNED, BOOKED -> CourseModel.Look.VISIT_DUE;
                };
        var words = Texts.text("course.visit." + visit.state().name(), DateText.of(visit.day()));
        var text = visit.closing()
                .flatMap(Closing::reason)
                .map(reason -> Texts.text("course.visit.because", words, Texts.of(reason)))
                .orElse(words);
        var href = Urls.visits(course.child().id().value());
        return new CourseModel.Mark(visit.day(), null, look, text, null, href);
    }

    private CourseModel.Mark size(Fact<BodySize> fact) {
        var size = Objects.requireNonNull(fact.finding());
        var measured = new ArrayList<String>();
        if (size.height() != null) {
            measured.add(QuantityText.ofHeight(size.height()));
        }
        if (size.weight() != null) {
            measured.add(QuantityText.of(size.weight()));
        }
        size.index().ifPresent(index -> measured.add(QuantityText.ofIndex(index.kilogramsPerSquareMetre())));
        var text = Texts.text(
                "course.row.size", DateText.of(fact.on()), measured.stream().collect(Collectors.joining(", ")));
        return mark(fact, CourseModel.Look.EXAMINED, text, null);
    }

    private CourseModel.Mark boneAge(Fact<BoneAge> fact) {
        var boneAge = Objects.requireNonNull(fact.finding());
        var age = DateText.of(boneAge.age());
        var atAge = course.ageOn(fact.on()).map(DateText::of).orElseGet(() -> Texts.text("course.no-age"));
        var text =
                Texts.text("course.row.bone-age.text", DateText.of(fact.on()), age, atAge, Texts.of(boneAge.method()));
        return mark(fact, CourseModel.Look.BONE_AGE, text, age);
    }

    private CourseModel.Mark mark(Fact<?> fact, CourseModel.Look look, String text, @Nullable String shortText) {
        var examination = Urls.examination(course.child().id().value());
        return new CourseModel.Mark(fact.on(), null, look, text, shortText, examination);
    }
}
