package org.espalier.science.planning;

import org.espalier.science.quantity.Angle;
import org.espalier.science.quantity.Length;

/**
 * A single oblique cut through a bone bent and twisted, and the turn in the cut that straightens both.
 *
 * <p>The distal fragment is the proximal one turned by R; every rotation has an axis n. A cut square to n lets its two
 * faces slide on each other without a gap, and has the same place in both fragments since R n = n. With A the true
 * angulation and i the torsion:
 *
 * <pre>
 * cos(Φ/2) = cos(A/2) cos(i/2)      tan κ = sin(i/2) / tan(A/2)
 * </pre>
 *
 * <p>The surgeon turns the distal fragment by −Φ about n. The horizontal part of n lies half the torsion before the
 * axis of angulation as the proximal fragment sees it, half behind it as the distal one does: cuts planned without that
 * half turn leave up to 8 degrees (at 30 and 30).
 *
 * <p>Source: composition of rotations (Rodrigues); inclination and its derivation Orthopedic Reviews 120302; the
 * climbing rule Gopalan, Strategies Trauma Limb Reconstr, doi 10.5005/jp-journals-10080-1638. Error: that of the angles
 * put in; see {@link #leftBy(Angle, Angle, Angle)}.
 *
 * @param normal square to the cut, of length 1, its proximal part not negative
 * @param rotation Φ, the turn of the deformity about it, (−180, 180] degrees
 * @param deformity what the cut corrects
 * @param trueOnFilm which fragment the angulation was read true to
 */
public record ObliqueCut(Bearing normal, Angle rotation, BoneDeformity deformity, TrueFragment trueOnFilm) {

    /** How the cut runs through the bone, from the front bottom or inner side. */
    public enum Climb {
        /** Rises from front to back. */
        RISES_TO_POSTERIOR,
        /** Falls from front to back. */
        FALLS_TO_POSTERIOR,
        /** Rises from the inner to the outer side. */
        RISES_TO_LATERAL,
        /** Falls from the inner to the outer side. */
        FALLS_TO_LATERAL
    }

    private static final double NO_FRONTAL_PART_DEGREES = 1e-6;

    /**
     * The cut for a deformity, whatever its size; {@link SingleCut} tells whether it makes sense.
     *
     * @param deformity not wholly zero
     * @param trueOnFilm which fragment faced the film
     * @throws IllegalArgumentException if there is nothing to correct
     */
    static ObliqueCut of(BoneDeformity deformity, TrueFragment trueOnFilm) {
        Turn turn = deformity.turn(trueOnFilm);
        if (turn.vector().length() < 1e-12) {
            throw new IllegalArgumentException("A straight bone has no cut");
        }
        Bearing axis = turn.axis();
        boolean flip = axis.proximal() < 0;
        return new ObliqueCut(
                flip ? axis.times(-1) : axis,
                turn.angle().minus(flip ? twice(turn) : Angle.ZERO),
                deformity,
                trueOnFilm);
    }

    private static Angle twice(Turn turn) {
        return Angle.ofDegrees(2 * turn.angle().degrees());
    }

    /** Between the cut and the length of the bone, 0 (along it) to 90 degrees (across it). */
    public Angle fromShaft() {
        return Angle.ofRadians(Math.atan2(normal.proximal(), normal.acrossTheBone()));
    }

    /** Between the cut and the plane across the bone, 0 to 90 degrees. */
    public Angle fromTransverse() {
        return Angle.ofDegrees(90).minus(fromShaft());
    }

    /** Where the normal points across the bone, from lateral towards anterior, (−180, 180] degrees. */
    public Angle azimuth() {
        return Angle.ofRadians(Math.atan2(normal.anterior(), normal.lateral()));
    }

    /** The line of the cut on the film from the front: by how much it falls towards lateral, −90 to 90 degrees. */
    public Angle frontalLine() {
        return Angle.ofRadians(Math.atan2(normal.lateral(), normal.proximal()));
    }

    /** The line of the cut on the film from the side: by how much it rises towards posterior, −90 to 90 degrees. */
    public Angle lateralLine() {
        return Angle.ofRadians(Math.atan2(normal.anterior(), normal.proximal()));
    }

    /** Which way the cut climbs, by the published rule of sixteen patterns. */
    public Climb climb() {
        Bearing midway = Turn.about(
                        Bearing.PROXIMAL, Angle.ofDegrees(halfTorsion().degrees()))
                .apply(normal);
        if (Math.abs(deformity.varus().degrees()) > NO_FRONTAL_PART_DEGREES) {
            return midway.anterior() > 0 ? Climb.RISES_TO_POSTERIOR : Climb.FALLS_TO_POSTERIOR;
        }
        return midway.lateral() < 0 ? Climb.RISES_TO_LATERAL : Climb.FALLS_TO_LATERAL;
    }

    private Angle halfTorsion() {
        double half = deformity.internalTorsion().degrees() / 2;
        return Angle.ofDegrees(trueOnFilm == TrueFragment.PROXIMAL ? half : -half);
    }

    /**
     * What part of the cut faces still meets after the turn about their middle, in a round bone.
     *
     * <p>1 − (2/π) atan(½ (sec ι − cos ι) |sin Φ|), the overlap of two ellipses.
     *
     * @return 0 to 1
     */
    public double contact() {
        double cosine = Math.cos(fromTransverse().toRadians());
        double excess = 1 / cosine - cosine;
        return 1 - 2 / Math.PI * Math.atan(excess / 2 * Math.abs(Math.sin(rotation.toRadians())));
    }

    /**
     * How far the cut runs along the bone: D / tan κ.
     *
     * @param diameter of the bone there, above 0
     */
    public Length lengthAlongBone(Length diameter) {
        return new Length(diameter.millimetres() / Math.tan(fromShaft().toRadians()));
    }

    /** What this cut and its turn leave when both are made exactly. */
    public BoneDeformity left() {
        return leftBy(Angle.ZERO, Angle.ZERO, Angle.ZERO);
    }

    /**
     * What is left when the cut or the turn misses by so much.
     *
     * @param steeper added to the angle between cut and shaft
     * @param azimuthBy added to the direction of the cut, from lateral towards anterior
     * @param turnedFurther added to the turn
     */
    public BoneDeformity leftBy(Angle steeper, Angle azimuthBy, Angle turnedFurther) {
        double inclination = fromShaft().plus(steeper).toRadians();
        double direction = azimuth().plus(azimuthBy).toRadians();
        Bearing made = new Bearing(
                Math.cos(inclination) * Math.cos(direction),
                Math.cos(inclination) * Math.sin(direction),
                Math.sin(inclination));
        Turn correction = Turn.about(made, rotation.plus(turnedFurther)).inverse();
        return BoneDeformity.of(correction.after(deformity.turn(trueOnFilm)));
    }

    /**
     * Where the centre of the deformity comes to lie when the turn is made about another point of the cut.
     *
     * @param pivot the point about which the fragment turns, millimetres from the centre of the deformity
     * @return the centre's image, millimetres; its part across the bone is the translation left
     */
    public Bearing centreAfterTurnAbout(Bearing pivot) {
        return Turn.about(normal, rotation).inverse().apply(pivot.times(-1)).plus(pivot);
    }
}
