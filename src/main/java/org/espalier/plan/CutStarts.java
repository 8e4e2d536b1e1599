package org.espalier.plan;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.espalier.patient.Bone;
import org.espalier.science.alignment.Landmark;
import org.espalier.science.alignment.LimbLandmarks;
import org.espalier.science.planning.CutKind;
import org.espalier.science.quantity.PixelPoint;
import org.espalier.science.quantity.Side;

/** Cuts to start from: across the metaphysis beside the knee, a seventh of the bone away from it. */
final class CutStarts {

    private static final double FROM_THE_KNEE = 0.14;
    private static final double HALF_WIDTH = 0.6;

    private CutStarts() {}

    /** Those whose bone is marked, tibia before femur, straight before round. */
    static List<CutFilm.Start> of(LimbLandmarks limb, Side side) {
        var shin = FilmLimb.middle(limb, Landmark.PLATEAU_MEDIAL, Landmark.PLATEAU_LATERAL);
        var ankle = FilmLimb.middle(limb, Landmark.PLAFOND_MEDIAL, Landmark.PLAFOND_LATERAL);
        var knee = FilmLimb.middle(limb, Landmark.CONDYLE_MEDIAL, Landmark.CONDYLE_LATERAL);
        return Stream.concat(
                        ofBone(Bone.TIBIA, side, shin, ankle, limb.point(Landmark.PLATEAU_LATERAL)),
                        ofBone(
                                Bone.FEMUR,
                                side,
                                knee,
                                limb.point(Landmark.HIP_CENTRE),
                                limb.point(Landmark.CONDYLE_LATERAL)))
                .toList();
    }

    private static Stream<CutFilm.Start> ofBone(
            Bone bone,
            Side side,
            Optional<PixelPoint> knee,
            Optional<PixelPoint> farEnd,
            Optional<PixelPoint> lateral) {
        return knee.flatMap(near -> farEnd.flatMap(
                        far -> lateral.map(edge -> both(bone, side, near, far, Math.abs(edge.x() - near.x())))))
                .orElseGet(Stream::empty);
    }

    private static Stream<CutFilm.Start> both(Bone bone, Side side, PixelPoint near, PixelPoint far, double half) {
        double x = near.x() + FROM_THE_KNEE * (far.x() - near.x());
        double y = near.y() + FROM_THE_KNEE * (far.y() - near.y());
        double reach = 2 * HALF_WIDTH * Math.max(half, 1);
        return Stream.of(
                new CutFilm.Start(
                        bone,
                        CutKind.STRAIGHT,
                        new CutRequest(0, side, x - reach, y, x + reach, y, x, y, 0, CutKind.STRAIGHT)),
                new CutFilm.Start(
                        bone,
                        CutKind.ROUND,
                        new CutRequest(0, side, x - reach, y, x + reach, y, near.x(), near.y(), 0, CutKind.ROUND)));
    }
}
