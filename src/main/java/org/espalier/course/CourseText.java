package org.espalier.course;

import java.util.Optional;
import java.util.stream.Collectors;
import org.espalier.kit.DateText;
import org.espalier.kit.Texts;
import org.espalier.kit.Urls;
import org.espalier.reading.ChangeText;
import org.espalier.reading.NumberText;
import org.espalier.reading.Reading;
import org.espalier.science.alignment.NormalRange;

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
        return since(point)
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
    Optional<String> since(CoursePoint point) {
        return point.since().flatMap(since -> ChangeText.limit(since.change())
                .map(limit -> Texts.text("course.sentences", became(since), limit)));
    }

    private static String became(CoursePoint.Since since) {
        var from = DateText.of(since.from());
        return since.change().isUnmeasurable()
                ? Texts.text("course.unchanged", from)
                : Texts.text("course.changed", from, ChangeText.difference(since.change()));
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

    /** A film's day with the age, short. */
    String dayAndAge(Course.FilmOfCourse film) {
        return film.day()
                .map(taken -> Texts.text(
                        "course.paper.day-and-age",
                        DateText.of(taken),
                        course.ageOn(taken).map(DateText::of).orElse(Texts.text("course.no-age"))))
                .orElse(Texts.text("course.film.no-day"));
    }

    /** The film room of a film. */
    String address(Course.FilmOfCourse film) {
        return Urls.film(film.film().id().value());
    }

    /** The way to a film beside an earlier one. */
    CourseSheet.Link comparison(Course.FilmOfCourse earlier, Course.FilmOfCourse later) {
        var day = earlier.day().map(DateText::of).orElseGet(() -> Texts.text("course.film.no-day"));
        var address =
                Urls.compare(earlier.film().id().value(), later.film().id().value());
        return new CourseSheet.Link(Texts.text("course.compare", day), address);
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
}
