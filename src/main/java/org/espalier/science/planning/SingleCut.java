package org.espalier.science.planning;

import org.espalier.science.quantity.Angle;

/** Whether a deformity lends itself to one oblique cut, and the cut. */
public sealed interface SingleCut {

    /**
     * Below this cut-to-shaft angle the cut runs so far along the bone that it is flagged (judged here, not published).
     */
    Angle STEEPEST = Angle.ofDegrees(30);

    /** Turns below this are not worth a cut (judged here). */
    Angle NOTHING_TO_TURN = Angle.ofDegrees(0.5);

    /** Angulation or torsion below this is left out of account (judged here). */
    Angle NOT_TOLD_APART = Angle.ofDegrees(1);

    /** Why there is no oblique cut. */
    enum Reason {
        /** The bone is straight within what can be measured. */
        STRAIGHT,
        /** Torsion alone: a cut across the bone and a turn. */
        TORSION_ALONE,
        /** Angulation alone: the cut would run along the bone; a wedge or a dome is the way. */
        ANGULATION_ALONE
    }

    /**
     * A cut.
     *
     * @param cut the cut
     * @param flaggedAsLong whether it runs at less than {@link #STEEPEST} to the shaft
     */
    record Possible(ObliqueCut cut, boolean flaggedAsLong) implements SingleCut {}

    /**
     * No oblique cut.
     *
     * @param reason why
     */
    record Refused(Reason reason) implements SingleCut {}

    /**
     * The single cut for a deformity.
     *
     * @param deformity what is to be corrected
     * @param trueOnFilm which fragment faced the film
     */
    static SingleCut plan(BoneDeformity deformity, TrueFragment trueOnFilm) {
        Angle angulation = deformity.truePlane().angulation();
        Angle torsion = deformity.internalTorsion().abs();
        boolean bent = angulation.compareTo(NOT_TOLD_APART) >= 0;
        boolean twisted = torsion.compareTo(NOT_TOLD_APART) >= 0;
        if (deformity.turn(trueOnFilm).angle().compareTo(NOTHING_TO_TURN) < 0 || (!bent && !twisted)) {
            return new Refused(Reason.STRAIGHT);
        }
        if (!bent || !twisted) {
            return new Refused(bent ? Reason.ANGULATION_ALONE : Reason.TORSION_ALONE);
        }
        ObliqueCut cut = ObliqueCut.of(deformity, trueOnFilm);
        return new Possible(cut, cut.fromShaft().compareTo(STEEPEST) < 0);
    }
}
