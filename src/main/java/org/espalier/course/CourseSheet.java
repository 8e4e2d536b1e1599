package org.espalier.course;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.espalier.kit.CourseModel;
import org.espalier.kit.Texts;
import org.espalier.reading.NumberText;
import org.espalier.reading.Reading;
import org.espalier.science.alignment.Quantity;
import org.espalier.science.quantity.Side;

/**
 * A course ready to be shown: what the chart draws, and the same facts as a list, the newest film first, every text
 * included.
 *
 * @param forecasts where the limbs with a plate in are going, each with its interval and the chance that it never comes
 * @param events what happened besides films, the newest first
 * @param sources where the normal ranges drawn were published, by quantity
 * @param radiation how many films were taken so far
 */
public record CourseSheet(
        CourseModel chart,
        List<FilmEntry> films,
        List<String> forecasts,
        List<String> events,
        List<String> sources,
        String radiation) {

    /**
     * One film of the list.
     *
     * @param text day, age and how it was taken
     * @param dayAndAge for a column
     * @param href the film room
     * @param picture a small picture; empty while there is none
     * @param compare the way to this film beside the one before it; empty where there is none to be shown
     * @param rows what stands of the limbs read
     * @param readings every signed reading, the newest first
     */
    public record FilmEntry(
            String text,
            String dayAndAge,
            String href,
            Optional<String> picture,
            Optional<Link> compare,
            List<Row> rows,
            List<ReadingEntry> readings) {

        public boolean isRead() {
            return !readings.isEmpty();
        }
    }

    /** A way to another screen. */
    public record Link(String text, String href) {}

    /**
     * One quantity on a film; a limb without it has no value.
     *
     * @param isLeading whether it is among those a limb is judged by at a glance
     */
    public record Row(String quantity, String label, boolean isLeading, Optional<Value> right, Optional<Value> left) {

        public Optional<Value> of(Side side) {
            return side == Side.RIGHT ? right : left;
        }
    }

    /**
     * What was read of one limb.
     *
     * @param since what became of it since the film before; empty for the first, or where no limit is established
     * @param unchanged whether that is "no measurable change"
     */
    public record Value(String text, Optional<String> since, boolean unchanged) {}

    /**
     * One signed reading.
     *
     * @param superseded why it was superseded; empty while it stands
     */
    public record ReadingEntry(String text, String href, Optional<String> superseded) {}

    /** Lays out a course. */
    public static CourseSheet of(Course course) {
        var words = new CourseText(course);
        var points = new CoursePoints(course);
        var films = course.films().stream()
                .sorted(Comparator.comparing(
                        (Course.FilmOfCourse film) -> film.day().orElse(LocalDate.MAX), Comparator.reverseOrder()))
                .map(film -> entry(film, before(film, course), points, words))
                .toList();
        var chart = CourseChartModel.of(course);
        return new CourseSheet(
                chart,
                films,
                chart.fans().stream().map(CourseModel.Fan::text).toList(),
                events(chart),
                CourseChartModel.sources(course),
                Texts.text("course.radiation", films.size()));
    }

    /** Whether nothing was read yet. */
    public boolean isEmpty() {
        return chart.tracks().isEmpty();
    }

    private static List<String> events(CourseModel chart) {
        return chart.rows().stream()
                .flatMap(row -> row.marks().stream())
                .sorted(Comparator.comparing(CourseModel.Mark::date).reversed())
                .map(CourseModel.Mark::text)
                .toList();
    }

    /** The film shown before this one. */
    private static Optional<Course.FilmOfCourse> before(Course.FilmOfCourse film, Course course) {
        return course.films().stream()
                .filter(Course.FilmOfCourse::isShown)
                .takeWhile(other -> other != film)
                .reduce((one, later) -> later)
                .filter(other -> film.isShown());
    }

    private static FilmEntry entry(
            Course.FilmOfCourse film, Optional<Course.FilmOfCourse> before, CoursePoints points, CourseText words) {
        return new FilmEntry(
                words.film(film),
                words.dayAndAge(film),
                words.address(film),
                film.isShown() ? Optional.of(words.thumbnail(film)) : Optional.empty(),
                before.map(earlier -> words.comparison(earlier, film)),
                rows(points.on(film.film().id()), words),
                film.readings().stream()
                        .map(reading -> reading(reading, film, words))
                        .toList());
    }

    private static List<Row> rows(List<CoursePoint> points, CourseText words) {
        var quantities =
                points.stream().map(CoursePoint::quantity).distinct().sorted().toList();
        return Lane.inOrder(quantities).stream()
                .map(quantity -> new Row(
                        quantity.code(),
                        NumberText.label(quantity),
                        Lane.isLeading(quantity),
                        value(points, quantity, Side.RIGHT, words),
                        value(points, quantity, Side.LEFT, words)))
                .toList();
    }

    private static Optional<Value> value(List<CoursePoint> points, Quantity quantity, Side side, CourseText words) {
        return points.stream()
                .filter(point -> point.quantity() == quantity && point.side() == side)
                .findFirst()
                .map(point -> new Value(words.valueWithError(point), words.since(point), point.isUnchanged()));
    }

    private static ReadingEntry reading(Reading reading, Course.FilmOfCourse film, CourseText words) {
        var later = film.readings().stream()
                .flatMap(other -> other.supersedes().stream())
                .filter(superseding -> superseding.reading().equals(reading.id()))
                .findFirst();
        return new ReadingEntry(
                words.reading(reading),
                words.address(film) + "?reading=" + reading.id().value(),
                later.map(superseding -> Texts.text("course.superseded", superseding.reason())));
    }
}
