package org.espalier.reading;

import com.fasterxml.jackson.annotation.JsonFormat;
import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.annotation.JsonProperty;
import com.fasterxml.jackson.annotation.JsonPropertyOrder;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.espalier.science.quantity.PixelPoint;
import org.espalier.science.quantity.Side;
import org.jspecify.annotations.Nullable;

/** What the film room draws: every number as text, every line and circle in pixels of the film as stored. */
public record MeasureAnswer(
        long seq,
        long revision,
        List<ShownNumber> numbers,
        List<Line> lines,
        List<Circle> circles,
        List<Warning> warnings,
        List<Comparison> comparisons,
        List<String> sources) {

    /**
     * One quantity of one limb.
     *
     * @param range normal for age, when a range is known
     * @param norm mean and spread of each study for age and sex, or that there is none for this age
     * @param note method, uncertainty, or why there is no value
     * @param doubtful whether it is to be shown in grey
     */
    @JsonInclude(JsonInclude.Include.NON_NULL)
    public record ShownNumber(
            String id,
            Side side,
            String label,
            String text,
            @Nullable String range,
            @Nullable String norm,
            @Nullable String note,
            State state,
            boolean doubtful) {}

    /** What follows from several numbers: right against left, or of one limb. */
    @JsonInclude(JsonInclude.Include.NON_NULL)
    public record Comparison(
            String label, String text, @Nullable String note) {}

    /** Against the normal range. */
    public enum State {
        @JsonProperty("in")
        IN,
        @JsonProperty("out")
        OUT,
        @JsonProperty("none")
        NONE
    }

    /** A polyline. */
    @JsonInclude(JsonInclude.Include.NON_NULL)
    public record Line(
            Side side,
            String kind,
            List<Point> points,
            @Nullable String label) {}

    /** A corner of a polyline, written as {@code [x, y]}. */
    @JsonFormat(shape = JsonFormat.Shape.ARRAY)
    @JsonPropertyOrder({"x", "y"})
    public record Point(double x, double y) {

        static Point of(PixelPoint pixel) {
            return new Point(pixel.x(), pixel.y());
        }
    }

    /** A fitted circle; an ellipse where pixels are not square. */
    @JsonInclude(JsonInclude.Include.NON_NULL)
    public record Circle(@Nullable Side side, String landmark, double x, double y, double rx, double ry) {}

    /** Something to know before signing. */
    @JsonInclude(JsonInclude.Include.NON_NULL)
    public record Warning(@Nullable Side side, String text, String severity) {

        static Warning of(Caution caution) {
            return new Warning(
                    caution.side(),
                    CautionText.of(caution),
                    caution.kind().severity().name().toLowerCase(Locale.ROOT));
        }
    }

    static MeasureAnswer of(
            FilmMeasurement measurement, ReadingSettings settings, ChildOnFilm child, long seq, long revision) {
        var norms = new Norms(child);
        var quantities = measurement.values().stream()
                .map(ReadNumber::quantity)
                .distinct()
                .toList();
        return new MeasureAnswer(
                seq,
                revision,
                new NumberRows(settings, norms).of(measurement.numbers()),
                DrawnLines.of(measurement.limbs()),
                measurement.circles().stream()
                        .flatMap(edge -> edge.drawn().stream())
                        .toList(),
                measurement.cautions().stream().map(Warning::of).toList(),
                Stream.concat(new Comparisons(measurement).all().stream(), FollowingNumbers.of(measurement).stream())
                        .toList(),
                norms.sources(quantities));
    }
}
