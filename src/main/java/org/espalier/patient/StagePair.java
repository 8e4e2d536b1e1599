package org.espalier.patient;

/** The stage of one limb on one film by two readers of a hospital, the earlier entry first. */
public record StagePair(TibiaVaraStage.Stage first, TibiaVaraStage.Stage second) {

    /** How many stages lie between them. */
    public int apart() {
        return Math.abs(first.ordinal() - second.ordinal());
    }
}
