package org.espalier.reading;

import java.util.List;
import java.util.Optional;
import org.espalier.science.alignment.BallCalibration;
import org.espalier.science.quantity.Calibration;

/**
 * The scale of a film as a reader chose it.
 *
 * @param calibration what lengths are told by; none when they are not told
 * @param forAngles what points are brought to the plane by: keeps the film's pixel shape even where no length is told
 * @param ballPixels the ball's diameter in pixels across, when the ball gives the scale
 */
public record FilmScale(
        Calibration calibration, Calibration forAngles, Optional<Double> ballPixels, List<Caution> cautions) {

    /** Between these a ball's scale is the film's own less magnification: up to 1.4 by a short tube distance. */
    private static final double LEAST_RATIO = 0.7;

    private static final double GREATEST_RATIO = 1.03;

    static FilmScale of(ReadingSettings settings, Calibration tags, List<RoundEdge> circles) {
        return switch (settings.calibration()) {
            case NONE -> none(tags, Caution.Kind.UNCALIBRATED);
            case TAGS -> ofTags(tags);
            case BALL -> ofBall(settings, tags, circles);
        };
    }

    public boolean isInMillimetres() {
        return calibration.isInMillimetres();
    }

    private static FilmScale none(Calibration tags, Caution.Kind why) {
        return new FilmScale(Calibration.none(), tags, Optional.empty(), List.of(Caution.ofFilm(why)));
    }

    private static FilmScale ofTags(Calibration tags) {
        return switch (tags.origin()) {
            case NONE -> none(tags, Caution.Kind.UNCALIBRATED);
            case DETECTOR_PLANE ->
                new FilmScale(tags, tags, Optional.empty(), List.of(Caution.ofFilm(Caution.Kind.DETECTOR_PLANE)));
            default -> new FilmScale(tags, tags, Optional.empty(), List.of());
        };
    }

    private static FilmScale ofBall(ReadingSettings settings, Calibration tags, List<RoundEdge> circles) {
        var ball = circles.stream().filter(RoundEdge::isBall).findFirst();
        var circle = ball.flatMap(RoundEdge::fitted);
        var diameter = settings.ballDiameter();
        if (circle.isEmpty() || diameter.isEmpty()) {
            return none(tags, Caution.Kind.BALL_MISSING);
        }
        var calibration = BallCalibration.of(circle.get(), diameter.get(), tags);
        return new FilmScale(
                calibration, calibration, ball.flatMap(RoundEdge::diameterPixels), againstTags(calibration, tags));
    }

    private static List<Caution> againstTags(Calibration ball, Calibration tags) {
        return tags.scale()
                .flatMap(own -> ball.scale().map(scale -> scale.millimetresPerPixelX() / own.millimetresPerPixelX()))
                .filter(ratio -> ratio < LEAST_RATIO || ratio > GREATEST_RATIO)
                .map(ratio -> List.of(Caution.ofFilm(Caution.Kind.BALL_AGAINST_TAGS, ratio)))
                .orElse(List.of());
    }
}
