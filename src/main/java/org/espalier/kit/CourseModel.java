package org.espalier.kit;

import java.time.LocalDate;
import java.util.List;
import org.espalier.science.quantity.Side;
import org.jspecify.annotations.Nullable;

/**
 * What a course chart draws, values and texts ready: the same words as {@code frontend/course-chart/contract.ts}.
 *
 * @param birth ages on the upper axis are counted from here
 * @param from first day of the time axis
 * @param to last day of the time axis
 * @param fans where limbs are going, by track
 * @param rows what else happened, one row each along the foot
 */
public record CourseModel(
        LocalDate birth,
        LocalDate from,
        LocalDate to,
        LocalDate today,
        List<Quantity> quantities,
        List<Track> tracks,
        List<Fan> fans,
        List<Row> rows,
        List<FilmMark> films) {

    /** Which end of a quantity's numbers is varus; varus is drawn up in every lane. */
    public enum Varus {
        HIGHER,
        LOWER
    }

    /** What a point stands on; a draft is drawn hollow. */
    public enum Kind {
        SIGNED,
        DRAFT,
        IMPORTED
    }

    /**
     * One lane.
     *
     * @param part e.g. "femur"
     * @param unit written behind each number of the axis, e.g. "°"
     * @param min lower end of the numbers shown
     * @param max upper end of the numbers shown
     * @param up word at the upper end instead of varus
     * @param down word at the lower end instead of valgus
     * @param bands normal for age at dates, in order, one list for each stretch of age with a known norm
     */
    public record Quantity(
            String id,
            String label,
            String part,
            String unit,
            double min,
            double max,
            Varus varus,
            @Nullable String up,
            @Nullable String down,
            List<List<Normal>> bands,
            @Nullable String bandLabel) {}

    /** The normal range on one day. */
    public record Normal(LocalDate date, double low, double high) {}

    /** One quantity of one limb over time. */
    public record Track(String id, String quantity, Side side, List<Point> points) {}

    /**
     * One reading.
     *
     * @param error half length of the error bar
     * @param text all of it in words
     * @param shortText value and direction, written beside the newest point
     * @param join whether a line joins it to the point before
     * @param unchanged "no measurable change" since the point before
     */
    public record Point(
            LocalDate date,
            double value,
            double error,
            String text,
            String shortText,
            Kind kind,
            boolean join,
            boolean unchanged,
            @Nullable String film,
            @Nullable String href) {}

    /**
     * A forecast from the last film on.
     *
     * @param track whose it is
     * @param text all of it in words, with its interval and the chance that the target is never reached
     * @param days in order, from the last film
     */
    public record Fan(String track, String text, List<Spread> days) {}

    /** Where half, and where nine in ten of such limbs are found on a day. */
    public record Spread(LocalDate date, double low90, double low50, double middle, double high50, double high90) {}

    /** How a mark of a row is drawn. */
    public enum Look {
        /** A bar: plate and both screws hold. */
        PLATE,
        /** A bar: the plate lies there and holds nothing. */
        PLATE_PARKED,
        PROCEDURE,
        VISIT,
        VISIT_MISSED,
        VISIT_DUE,
        EXAMINED,
        BONE_AGE
    }

    /**
     * One row along the foot.
     *
     * @param side null when it concerns the whole child
     */
    public record Row(String id, String label, @Nullable Side side, List<Mark> marks) {}

    /**
     * What happened on a day, or from one day to another.
     *
     * @param to the last day of a bar; null for a single day, or when the bar still goes on
     * @param text all of it in words
     * @param shortText written at the mark where there is room
     */
    public record Mark(
            LocalDate date,
            @Nullable LocalDate to,
            Look look,
            String text,
            @Nullable String shortText,
            @Nullable String href) {}

    /** A film under the axis, as a small picture. */
    public record FilmMark(String id, LocalDate date, String src, String href, String label) {}
}
