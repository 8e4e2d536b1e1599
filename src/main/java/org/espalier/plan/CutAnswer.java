package org.espalier.plan;

import com.fasterxml.jackson.annotation.JsonFormat;
import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.annotation.JsonPropertyOrder;
import java.util.List;
import org.espalier.science.quantity.PixelPoint;
import org.jspecify.annotations.Nullable;

/**
 * What the desk draws of a cut, in pixels of the film as stored, and says of it.
 *
 * @param bone the one that is cut
 * @param part the corners of what lies below the cut
 * @param matrix how that part is moved, in the order of SVG's {@code matrix(a b c d e f)}
 * @param centre where the axes of the bone that is cut cross; null where that is not told
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record CutAnswer(
        long seq,
        String bone,
        List<Point> part,
        List<Double> matrix,
        List<Line> lines,
        @Nullable Point centre,
        List<Number> numbers,
        List<String> notes) {

    /** A place, written as {@code [x, y]}. */
    @JsonFormat(shape = JsonFormat.Shape.ARRAY)
    @JsonPropertyOrder({"x", "y"})
    public record Point(double x, double y) {

        static Point of(PixelPoint pixel) {
            return new Point(pixel.x(), pixel.y());
        }
    }

    /**
     * A line by what it is: {@code before}, {@code after}, {@code bearing-before}, {@code bearing-after}; {@code cut};
     * {@code bend} for an axis of the bone that is cut, {@code level} for the standard error of the level of their
     * crossing.
     */
    public record Line(String kind, List<Point> points) {}

    /** One number before and after. */
    public record Number(String label, String before, String after) {}
}
