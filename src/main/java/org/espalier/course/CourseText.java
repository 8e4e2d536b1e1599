package org.espalier.course;

import java.util.Optional;
import java.util.stream.Collectors;
import org.espalier.kit.CourseModel;
import org.espalier.kit.DateText;
import org.espalier.kit.Texts;
import org.espalier.kit.Urls;
import org.espalier.reading.NumberText;
import org.espalier.reading.Reading;
import org.espalier.science.alignment.ChangeLimit;
import org.espalier.science.alignment.NormalRange;
import org.espalier.science.quantity.Angle;

/** The course in words. */
final class CourseText {

    private final Course course;

    CourseText(Course course) {
        this.course = course;
    }

    /** All of a point: day, age, quantity, side, value, error, and what became of it since the film before. */
    String of(CoursePoint point) {
        var words = Texts.text(
                "course.point",
                DateText.of(point.day()),
                course.ageOn(point.day()).map(DateText::of).orElse(Texts.text("course.no-age")),
                NumberText.label(point.quantity()),
                Texts.of(point.side()),
                valueWithError(point));
        return point.since()
                .flatMap(change -> since(point, change))
                .map(since -> Texts.text("course.sentences", words, since))
                .orElse(words);
    }

    /** The value with its direction. */
    String value(CoursePoint point) {
        var range = course.ageOn(point.day()).flatMap(age -> NormalRange.of(point.quantity(), age));
        return NumberText.of(point.quantity(), point.value(), range);
    }

    /** The value with its direction and the reader error, and whether it is in doubt. */
    String valueWithError(CoursePoint point) {
        var value = NumberText.error(point.quantity())
                .map(error -> Texts.text("course.value.error", value(point), error))
                .orElseGet(() -> value(point));
        return point.doubtful() ? Texts.text("course.value.doubtful", value) : value;
    }

    /** What became of it since the film before; empty where no limit is established, for then nothing is said. */
    Optional<String> since(CoursePoint point, CoursePoint.Change change) {
        return change.judged().map(judged -> {
            var text = change.isUnmeasurable()
                    ? Texts.text("course.unchanged", DateText.of(change.from()))
                    : Texts.text(
                            "course.changed",
                            DateText.of(change.from()),
                            NumberText.brief(point.quantity(), Math.abs(change.difference())),
                            direction(point, change));
            return Texts.text("course.sentences", text, limit(judged));
        });
    }

    /** A film: its day, the age, how it was taken. */
    String film(Course.FilmOfCourse film) {
        var day = film.day()
                .map(taken -> Texts.text(
                        "course.film.day",
                        DateText.of(taken),
                        course.ageOn(taken).map(DateText::of).orElse(Texts.text("course.no-age"))))
                .orElse(Texts.text("course.film.no-day"));
        return film.film()
                .view()
                .map(view -> Texts.text("course.film.view", day, view))
                .orElse(day);
    }

    /** The film room of a film. */
    String address(Course.FilmOfCourse film) {
        return Urls.film(film.film().id().value());
    }

    /** The address of the small picture of a film. */
    String thumbnail(Course.FilmOfCourse film) {
        return "/api/films/" + film.film().id().value() + "/thumbnail";
    }

    /** A signed reading: who read which limbs, and when. */
    String reading(Reading reading) {
        return Texts.text(
                "course.reading",
                reading.limbs().stream().map(Texts::of).collect(Collectors.joining(", ")),
                reading.readerName(),
                DateText.of(reading.signedAt().atZone(course.zone()).toLocalDate()));
    }

    private static String direction(CoursePoint point, CoursePoint.Change change) {
        boolean isVarusHigher = Lane.of(point.quantity()).varus() == CourseModel.Varus.HIGHER;
        return Texts.text(change.difference() > 0 == isVarusHigher ? "course.towards-varus" : "course.towards-valgus");
    }

    private static String limit(CoursePoint.Judged judged) {
        ChangeLimit limit = judged.limit();
        return Texts.text(
                judged.flexionRecorded() ? "course.limit" : "course.limit.straight",
                degrees(limit.limit()),
                degrees(limit.reader()),
                degrees(limit.positioning()));
    }

    private static String degrees(Angle angle) {
        return String.valueOf(angle.degrees());
    }
}
