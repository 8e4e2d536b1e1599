package org.espalier.science.alignment;

import org.espalier.science.quantity.Angle;

/**
 * How far the angle between a plate's screws has stayed behind the joint angle it should follow.
 *
 * <pre>
 * lag  = |Δ joint angle| − |Δ screw angle|
 * SD   = √2 · √(σ_joint² + σ_screw²)      both films
 * </pre>
 *
 * <p>With rigid screws held by the bone both angles change alike. Pointed out only past 2 SD and once the joint angle
 * has changed by more than the free play of the heads in the plate; before that, or within 2 SD, nothing is said. It
 * may mean a bending or cutting screw, growth elsewhere in the bone, or a limb turned on one film: a question, not a
 * finding.
 *
 * <p>Source: plane geometry of a rigid link; σ_joint from {@link ReaderError}; σ_screw is assumed, not measured.
 *
 * @param joint by how much the joint angle changed, with its sign
 * @param screws by how much the angle between the screws changed, with its sign
 * @param standardDeviation of the lag, above 0
 */
public record ScrewLag(Angle joint, Angle screws, Angle standardDeviation) {

    /** Standard error of one reading of the angle between two screws: assumed. */
    public static final Angle SCREW_ERROR = new Angle(1.1);

    private static final double TWO_SIDED_95 = 1.96;

    /** What is said of a lag. */
    public enum Verdict {
        /** The joint angle has not changed by more than the heads may turn in the plate. */
        WITHIN_FREE_PLAY,
        /** No more than two standard deviations. */
        WITHIN_ERROR,
        /** More: to be pointed out. */
        BEHIND
    }

    /**
     * The lag between two films with the same plate.
     *
     * @param quantity the joint angle at the plate's physis: mLDFA or mMPTA
     * @param jointBefore on the earlier film
     * @param jointAfter on the later film
     * @param screwsBefore on the earlier film
     * @param screwsAfter on the later film
     * @throws IllegalArgumentException if the quantity has no published reader error in degrees
     */
    public static ScrewLag between(
            Quantity quantity, Angle jointBefore, Angle jointAfter, Angle screwsBefore, Angle screwsAfter) {
        if (quantity != Quantity.MLDFA && quantity != Quantity.MMPTA) {
            throw new IllegalArgumentException("Screws at the knee follow mLDFA or mMPTA, not " + quantity.code());
        }
        double jointError = ReaderError.halfWidth95(quantity).orElseThrow() / TWO_SIDED_95;
        double deviation = Math.sqrt(2) * Math.hypot(jointError, SCREW_ERROR.degrees());
        return new ScrewLag(jointAfter.minus(jointBefore), screwsAfter.minus(screwsBefore), new Angle(deviation));
    }

    /** How far the screws are behind; negative when they are ahead. */
    public Angle lag() {
        return joint.abs().minus(screws.abs());
    }

    /** Two standard deviations. */
    public Angle limit() {
        return new Angle(2 * standardDeviation.degrees());
    }

    /**
     * What is said of it.
     *
     * @param freePlay how far the heads turn in the plate before they bind, of this implant; 0 when it is
     *     not known
     */
    public Verdict verdict(Angle freePlay) {
        if (joint.abs().compareTo(freePlay) <= 0) {
            return Verdict.WITHIN_FREE_PLAY;
        }
        return lag().compareTo(limit()) > 0 ? Verdict.BEHIND : Verdict.WITHIN_ERROR;
    }
}
