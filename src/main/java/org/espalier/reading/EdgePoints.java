package org.espalier.reading;

import com.fasterxml.jackson.annotation.JsonFormat;
import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.annotation.JsonPropertyOrder;
import java.util.List;
import org.espalier.science.quantity.PixelPoint;
import org.espalier.science.quantity.Side;
import org.jspecify.annotations.Nullable;

/**
 * Points set on the edge of something round, in the order of setting. The ball belongs to the film as a whole and has
 * no side.
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record EdgePoints(@Nullable Side side, String landmark, List<EdgePoint> points) {

    /** What the calibration ball is called among the edges. */
    public static final String BALL = "ball";

    public EdgePoints {
        points = List.copyOf(points);
    }

    public List<PixelPoint> toPixels() {
        return points.stream()
                .map(point -> new PixelPoint(point.x(), point.y()))
                .toList();
    }

    /** One point on an edge, written as {@code [x, y]}. */
    @JsonFormat(shape = JsonFormat.Shape.ARRAY)
    @JsonPropertyOrder({"x", "y"})
    public record EdgePoint(double x, double y) {}
}
