package org.espalier.demo;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import org.espalier.demo.drawn.DrawnFilm;
import org.espalier.reading.EdgePoints;
import org.espalier.reading.PlacedPoint;
import org.espalier.science.alignment.Landmark;
import org.espalier.science.quantity.PixelPoint;
import org.espalier.science.quantity.Side;

/**
 * A reader with a human hand.
 *
 * <p>Ends of joint lines are missed by 0.25 mm, other points by 0.7 mm (standard deviation along x and y). On a knee of
 * 70 mm this gives a standard deviation of about half a degree for mLDFA and mMPTA.
 *
 * <p>Source for the size: Braun et al., J Orthop Surg Res 2023;18:69, ±1.06° and ±1.29° at 95 % between two readers.
 */
final class DemoReader {

    private static final double LINE_MM = 0.25;
    private static final double POINT_MM = 0.7;
    private static final int BALL_POINTS = 8;
    private static final Set<Landmark> LINES = Set.of(
            Landmark.CONDYLE_MEDIAL,
            Landmark.CONDYLE_LATERAL,
            Landmark.PLATEAU_MEDIAL,
            Landmark.PLATEAU_LATERAL,
            Landmark.PLAFOND_MEDIAL,
            Landmark.PLAFOND_LATERAL,
            Landmark.FEMUR_PHYSIS_MEDIAL,
            Landmark.FEMUR_PHYSIS_LATERAL,
            Landmark.TIBIA_PHYSIS_MEDIAL,
            Landmark.TIBIA_PHYSIS_LATERAL,
            Landmark.BEAK_MEDIAL,
            Landmark.BEAK_LATERAL,
            Landmark.FEMUR_BEAK_MEDIAL,
            Landmark.FEMUR_BEAK_LATERAL);

    private final DrawnFilm film;
    private final Random hand;

    DemoReader(DrawnFilm film, long seed) {
        this.film = film;
        this.hand = new Random(seed);
    }

    /** Every landmark of both legs, a little beside its true place. */
    List<PlacedPoint> points() {
        List<PlacedPoint> points = new ArrayList<>();
        for (Side side : Side.values()) {
            for (Map.Entry<Landmark, PixelPoint> truth :
                    film.landmarks(side).points().entrySet()) {
                double miss = LINES.contains(truth.getKey()) ? LINE_MM : POINT_MM;
                PixelPoint placed = missed(truth.getValue(), miss);
                points.add(new PlacedPoint(side, truth.getKey().code(), placed.x(), placed.y()));
            }
        }
        return points;
    }

    /** Points around the calibration ball. */
    EdgePoints ball() {
        List<EdgePoints.EdgePoint> edge = new ArrayList<>();
        double radius = film.ball().diameterPixels() / 2;
        for (int i = 0; i < BALL_POINTS; i++) {
            double angle = 2 * Math.PI * i / BALL_POINTS;
            PixelPoint truth = new PixelPoint(
                    film.ball().centre().x() + radius * Math.cos(angle),
                    film.ball().centre().y() + radius * Math.sin(angle));
            PixelPoint placed = missed(truth, LINE_MM);
            edge.add(new EdgePoints.EdgePoint(placed.x(), placed.y()));
        }
        return new EdgePoints(null, EdgePoints.BALL, edge);
    }

    private PixelPoint missed(PixelPoint truth, double mm) {
        double pixels = mm / film.bonePixel().millimetres();
        return new PixelPoint(truth.x() + pixels * hand.nextGaussian(), truth.y() + pixels * hand.nextGaussian());
    }
}
