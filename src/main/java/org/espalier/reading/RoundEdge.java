package org.espalier.reading;

import java.util.Optional;
import org.espalier.science.alignment.CircleFit;
import org.espalier.science.alignment.CircleFitting;
import org.espalier.science.quantity.Calibration;
import org.espalier.science.quantity.PixelPoint;
import org.espalier.science.quantity.PlanePoint;
import org.espalier.science.quantity.Side;
import org.jspecify.annotations.Nullable;

/**
 * Something round on a film, fitted in the plane of the film's own scale, so that pixels that are not square do no
 * harm.
 *
 * @param tags the film's own scale
 */
record RoundEdge(EdgePoints edge, CircleFit fit, Calibration tags) {

    /** So many points stand on the edge before it is worth saying that no circle goes through them. */
    private static final int ENOUGH_POINTS = 5;

    static RoundEdge of(EdgePoints edge, Calibration tags) {
        return new RoundEdge(edge, CircleFitting.fit(edge.toPixels(), tags), tags);
    }

    boolean isBall() {
        return edge.side() == null;
    }

    Optional<CircleFit.Fitted> fitted() {
        return fit instanceof CircleFit.Fitted circle ? Optional.of(circle) : Optional.empty();
    }

    Optional<PixelPoint> centre() {
        return fitted().map(circle -> tags.toPixels(circle.centre()));
    }

    /** The diameter in pixels across. */
    Optional<Double> diameterPixels() {
        return fitted().map(circle -> 2 * halfAxes(circle).x());
    }

    Optional<MeasureAnswer.Circle> drawn() {
        return fitted().map(circle -> {
            var centre = tags.toPixels(circle.centre());
            var half = halfAxes(circle);
            return new MeasureAnswer.Circle(edge.side(), edge.landmark(), centre.x(), centre.y(), half.x(), half.y());
        });
    }

    Optional<Caution> caution() {
        return switch (fit) {
            case CircleFit.Fitted circle ->
                circle.isArcShort() && edge.points().size() >= ENOUGH_POINTS
                        ? Optional.of(caution(
                                Caution.Kind.SHORT_ARC, Math.round(circle.arc().degrees())))
                        : Optional.empty();
            case CircleFit.NotFitted none ->
                edge.points().size() >= ENOUGH_POINTS ? Optional.of(caution(Caution.Kind.NO_CIRCLE)) : Optional.empty();
        };
    }

    private Caution caution(Caution.Kind kind, Object... values) {
        @Nullable Side side = edge.side();
        return side == null ? Caution.ofFilm(kind, values) : Caution.ofLimb(kind, side, values);
    }

    private PixelPoint halfAxes(CircleFit.Fitted circle) {
        return tags.toPixels(new PlanePoint(circle.radius(), circle.radius()));
    }
}
