package org.espalier.demo.drawn;

import java.awt.geom.AffineTransform;
import java.awt.geom.Point2D;
import java.util.EnumMap;
import java.util.Map;
import org.espalier.science.alignment.Landmark;
import org.espalier.science.quantity.Side;

/**
 * Where the joint lines and axes of one leg lie, so that measuring them gives the asked angles exactly.
 *
 * <p>Frames: the body plane in mm (x as seen by the viewer, y down, origin between the hips); the femur (origin hip
 * centre, x lateral, y along the mechanical axis to the knee); the tibia (origin plateau midpoint, x lateral, y to the
 * ankle); and at each joint line a block with u lateral along the line and v away from the joint.
 */
final class LimbGeometry {

    private final DrawnLimb limb;
    private final BodyProportions body;
    private final AffineTransform femur;
    private final AffineTransform tibia;

    private LimbGeometry(DrawnLimb limb, BodyProportions body, AffineTransform femur) {
        this.limb = limb;
        this.body = body;
        this.femur = femur;
        this.tibia = new AffineTransform(femur);
        tibia.concatenate(tibiaInFemur(limb, body));
    }

    /** Stands the leg under its hip, ankle as near the midline as the knees allow. */
    static LimbGeometry stand(DrawnLimb limb, BodyProportions body, double softHalfKneeMm) {
        Point2D ankle = tibiaInFemur(limb, body)
                .transform(new Point2D.Double(0, limb.tibia().millimetres()), null);
        double hip = body.hipHalfMm();
        double reach = Math.hypot(ankle.getX(), ankle.getY());
        double feet = Math.max(0.62 * hip, 0.62 * body.kneeWidthMm());
        double toFeet = Math.atan2(ankle.getX(), ankle.getY()) - Math.asin((feet - hip) / reach);
        double kneesApart = Math.asin((hip - softHalfKneeMm) / limb.femur().millimetres());
        AffineTransform frame = new AffineTransform();
        frame.scale(limb.side() == Side.RIGHT ? -1 : 1, 1);
        frame.translate(hip, 0);
        frame.rotate(Math.min(toFeet, kneesApart));
        return new LimbGeometry(limb, body, frame);
    }

    /** The same leg moved down the film. */
    LimbGeometry lowered(double mm) {
        AffineTransform frame = AffineTransform.getTranslateInstance(0, mm);
        frame.concatenate(femur);
        return new LimbGeometry(limb, body, frame);
    }

    private static AffineTransform tibiaInFemur(DrawnLimb limb, BodyProportions body) {
        double turn = Math.toRadians(limb.hipKneeAnkle().degrees());
        double plateau = turn + Math.toRadians(limb.mMPTA().degrees() - 90);
        double offset = limb.kneeOffset().millimetres();
        double gap = body.jointGapMm();
        AffineTransform frame = new AffineTransform();
        frame.translate(
                offset * Math.cos(plateau) - gap * Math.sin(plateau),
                limb.femur().millimetres() + offset * Math.sin(plateau) + gap * Math.cos(plateau));
        frame.rotate(turn);
        return frame;
    }

    DrawnLimb limb() {
        return limb;
    }

    BodyProportions body() {
        return body;
    }

    AffineTransform femur() {
        return femur;
    }

    AffineTransform tibia() {
        return tibia;
    }

    /** Condyle line, v proximal, in the frame of the femur. */
    AffineTransform condyles() {
        double a = Math.toRadians(limb.mLDFA().degrees());
        return block(a, -1, limb.femur().millimetres());
    }

    /** Plateau line, v distal, in the frame of the tibia. */
    AffineTransform plateau() {
        return block(Math.toRadians(limb.mMPTA().degrees()), 1, 0);
    }

    /** Plafond, v proximal, in the frame of the tibia. */
    AffineTransform plafond() {
        return block(Math.toRadians(limb.ldta().degrees()), -1, limb.tibia().millimetres());
    }

    private static AffineTransform block(double angle, int away, double y) {
        double ux = Math.sin(angle);
        double uy = -Math.cos(angle);
        return new AffineTransform(ux, uy, -uy * away, ux * away, 0, y);
    }

    /** A point of the femoral shaft axis, so many mm above the condyle line, in the frame of the femur. */
    Point2D femoralAxis(double aboveKnee) {
        Point2D base = at(condyles(), -0.05 * body.kneeWidthMm(), 0);
        double lean = Math.toRadians(limb.shaftLean().degrees());
        return new Point2D.Double(base.getX() + aboveKnee * Math.sin(lean), base.getY() - aboveKnee * Math.cos(lean));
    }

    /** How far the tibial shaft axis lies medial of the mechanical axis, as x in the frame of the tibia. */
    double tibialAxisX() {
        return -0.04 * body.kneeWidthMm();
    }

    double femoralEpiphysisMm() {
        return 0.37 * body.kneeWidthMm() * (0.55 + 0.45 * body.epiphysisShare());
    }

    double tibialEpiphysisMm() {
        return 0.235 * body.kneeWidthMm() * (0.6 + 0.4 * body.epiphysisShare());
    }

    /** Direction of the tibial beak line as the angle from lateral, negative when its lateral end is proximal. */
    double beakTurn() {
        return -Math.toRadians(limb.metaphysealAngle().degrees());
    }

    Point2D trochanterTip() {
        double p = Math.toRadians(limb.lpfa().degrees());
        double reach = femoralAxis(limb.femur().millimetres()).getX() + 0.16 * body.kneeWidthMm();
        return new Point2D.Double(reach * Math.sin(p), reach * Math.cos(p));
    }

    static Point2D at(AffineTransform frame, double x, double y) {
        return frame.transform(new Point2D.Double(x, y), null);
    }

    /** Every landmark the film shows, in the body plane; what is not yet ossified is left out. */
    Map<Landmark, Point2D> landmarks() {
        Map<Landmark, Point2D> found = new EnumMap<>(Landmark.class);
        double width = body.kneeWidthMm();
        inFemur(found, Landmark.HIP_CENTRE, new Point2D.Double());
        inFemur(found, Landmark.HEAD_TOP, new Point2D.Double(0, -body.headRadiusMm()));
        if (body.isTrochanterOssified()) {
            inFemur(found, Landmark.TROCHANTER_TIP, trochanterTip());
        }
        double length = limb.femur().millimetres();
        inFemur(found, Landmark.FEMUR_SHAFT_PROXIMAL, femoralAxis(0.72 * length));
        inFemur(found, Landmark.FEMUR_SHAFT_DISTAL, femoralAxis(0.38 * length));
        AffineTransform condyles = condyles();
        double physis = femoralEpiphysisMm();
        double beak = physis + body.physisMm() / 2 + 0.04 * width;
        pair(found, Landmark.FEMUR_BEAK_MEDIAL, Landmark.FEMUR_BEAK_LATERAL, femur, condyles, 0.497 * width, beak);
        pair(
                found,
                Landmark.FEMUR_PHYSIS_MEDIAL,
                Landmark.FEMUR_PHYSIS_LATERAL,
                femur,
                condyles,
                0.485 * width,
                physis);
        double contact = 0.27 * width * body.epiphysisShare();
        pair(found, Landmark.CONDYLE_MEDIAL, Landmark.CONDYLE_LATERAL, femur, condyles, contact, 0);
        tibialLandmarks(found, width);
        return found;
    }

    private void tibialLandmarks(Map<Landmark, Point2D> found, double width) {
        AffineTransform plateau = plateau();
        double edge = 0.455 * width * body.epiphysisShare();
        pair(found, Landmark.PLATEAU_MEDIAL, Landmark.PLATEAU_LATERAL, tibia, plateau, edge, 0);
        pair(
                found,
                Landmark.TIBIA_PHYSIS_MEDIAL,
                Landmark.TIBIA_PHYSIS_LATERAL,
                tibia,
                tibialPhysis(),
                0.475 * width,
                0);
        pair(found, Landmark.BEAK_MEDIAL, Landmark.BEAK_LATERAL, tibia, tibialBeaks(), 0.487 * width, 0);
        double length = limb.tibia().millimetres();
        found.put(Landmark.TIBIA_SHAFT_PROXIMAL, at(tibia, tibialAxisX(), 0.32 * length));
        found.put(Landmark.TIBIA_SHAFT_DISTAL, at(tibia, tibialAxisX(), 0.72 * length));
        pair(found, Landmark.PLAFOND_MEDIAL, Landmark.PLAFOND_LATERAL, tibia, plafond(), 0.2 * width, 0);
    }

    /**
     * Physeal line of the tibia, u lateral and v distal, in the frame of the tibia: halfway between plateau and beaks.
     */
    AffineTransform tibialPhysis() {
        double plateau = Math.toRadians(limb.mMPTA().degrees() - 90);
        return tibialLine((plateau + beakTurn()) / 2, tibialEpiphysisMm());
    }

    /** Beak line of the tibia, u lateral and v distal, in the frame of the tibia. */
    AffineTransform tibialBeaks() {
        return tibialLine(beakTurn(), tibialEpiphysisMm() + body.physisMm() / 2 + 0.045 * body.kneeWidthMm());
    }

    private AffineTransform tibialLine(double turn, double below) {
        Point2D centre = at(plateau(), 0, below);
        AffineTransform frame = AffineTransform.getTranslateInstance(centre.getX(), centre.getY());
        frame.rotate(turn);
        return frame;
    }

    private void inFemur(Map<Landmark, Point2D> found, Landmark landmark, Point2D point) {
        found.put(landmark, femur.transform(point, null));
    }

    private static void pair(
            Map<Landmark, Point2D> found,
            Landmark medial,
            Landmark lateral,
            AffineTransform bone,
            AffineTransform line,
            double half,
            double v) {
        found.put(medial, bone.transform(at(line, -half, v), null));
        found.put(lateral, bone.transform(at(line, half, v), null));
    }
}
