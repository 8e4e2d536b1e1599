package org.espalier.course;

import java.time.LocalDate;
import java.util.List;
import java.util.function.Function;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.espalier.kit.CourseModel;
import org.espalier.kit.Texts;
import org.espalier.kit.Urls;
import org.espalier.reading.NumberText;
import org.espalier.science.alignment.Quantity;
import org.espalier.science.alignment.ReaderError;
import org.espalier.science.quantity.Side;

/** Lays a course out for the chart: lanes, bands, tracks and films, with every text. */
final class CourseChartModel {

    /** So many days stand free at both ends of the time axis. */
    private static final int MARGIN_DAYS = 45;

    private final Course course;
    private final CoursePoints points;
    private final List<CourseModel.Row> rows;
    private final ExaminedLanes examined;
    private final List<CourseModel.Track> tracks;
    private final List<CourseModel.Fan> fans;
    private final LocalDate from;
    private final LocalDate to;

    private CourseChartModel(Course course) {
        this.course = course;
        points = new CoursePoints(course);
        rows = CourseRows.of(course);
        examined = new ExaminedLanes(course);
        tracks = Stream.concat(
                        Lane.drawn(points.quantities()).stream().flatMap(this::tracks), examined.tracks().stream())
                .toList();
        fans = course.prognosis()
                .map(prognosis -> new Fans(prognosis).of(tracks))
                .orElse(List.of());
        var days = Stream.concat(
                        course.films().stream().flatMap(film -> film.day().stream()),
                        rows.stream().flatMap(row -> row.marks().stream()).map(CourseModel.Mark::date))
                .toList();
        from = days.stream().min(LocalDate::compareTo).orElse(course.today()).minusDays(MARGIN_DAYS);
        var ahead = fans.stream().map(fan -> fan.days().getLast().date());
        to = Stream.of(days.stream(), Stream.of(course.today()), ahead)
                .flatMap(Function.identity())
                .max(LocalDate::compareTo)
                .orElseThrow()
                .plusDays(MARGIN_DAYS);
    }

    static CourseModel of(Course course) {
        return new CourseChartModel(course).model();
    }

    /** Where the normal ranges drawn were published, by quantity. */
    static List<String> sources(Course course) {
        var chart = new CourseChartModel(course);
        return Lane.drawn(chart.points.quantities()).stream()
                .flatMap(chart::source)
                .toList();
    }

    private CourseModel model() {
        var quantities = Lane.drawn(points.quantities());
        return new CourseModel(
                course.birth(),
                from,
                to,
                course.today(),
                Stream.concat(quantities.stream().map(this::lane), examined.quantities().stream())
                        .toList(),
                tracks,
                fans,
                rows,
                course.films().stream()
                        .filter(Course.FilmOfCourse::isShown)
                        .flatMap(film -> film.day().map(day -> mark(film, day)).stream())
                        .toList());
    }

    private CourseModel.Quantity lane(Quantity quantity) {
        var lane = Lane.of(quantity);
        var band = NeutralBand.of(quantity, course.birth(), from, to);
        var shown = DoubleStream.concat(
                        DoubleStream.concat(
                                Stream.of(Side.values())
                                        .flatMap(side -> points.of(side, quantity).stream())
                                        .mapToDouble(CoursePoint::value),
                                ahead(quantity)),
                        band.stretches().stream()
                                .flatMap(List::stream)
                                .flatMapToDouble(day -> DoubleStream.of(day.low(), day.high())))
                .summaryStatistics();
        return new CourseModel.Quantity(
                quantity.code(),
                NumberText.label(quantity),
                lane.part(),
                lane.unit(),
                lane.roundDown(shown.getMin()),
                lane.roundUp(shown.getMax()),
                lane.varus(),
                lane.up(),
                lane.down(),
                band.stretches(),
                band.source().isPresent() ? Texts.text("course.band") : null);
    }

    /** The ends of the quantity's fans: nine in ten limbs are found between them. */
    private DoubleStream ahead(Quantity quantity) {
        return fans.stream()
                .filter(fan -> fan.track().startsWith(quantity.code() + "-"))
                .flatMap(fan -> fan.days().stream())
                .flatMapToDouble(day -> DoubleStream.of(day.low90(), day.high90()));
    }

    private Stream<String> source(Quantity quantity) {
        return NeutralBand.of(quantity, course.birth(), from, to)
                .source()
                .map(source -> Texts.text("course.source", NumberText.label(quantity), source))
                .stream();
    }

    private Stream<CourseModel.Track> tracks(Quantity quantity) {
        return Stream.of(Side.values())
                .filter(side -> !points.of(side, quantity).isEmpty())
                .map(side -> new CourseModel.Track(
                        quantity.code() + "-" + side.letter(),
                        quantity.code(),
                        side,
                        points.of(side, quantity).stream().map(this::point).toList()));
    }

    private CourseModel.Point point(CoursePoint point) {
        var words = new CourseText(course);
        return new CourseModel.Point(
                point.day(),
                point.value(),
                ReaderError.halfWidth95(point.quantity()).orElse(0),
                words.of(point),
                words.value(point),
                CourseModel.Kind.SIGNED,
                point.since().isPresent() && Lane.of(point.quantity()).isTrended(),
                point.isUnchanged(),
                point.film().value().toString(),
                Urls.film(point.film().value()));
    }

    private CourseModel.FilmMark mark(Course.FilmOfCourse film, LocalDate day) {
        var id = film.film().id().value();
        var words = new CourseText(course);
        return new CourseModel.FilmMark(
                id.toString(), day, words.thumbnail(film), words.address(film), words.film(film));
    }
}
