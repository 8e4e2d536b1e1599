package org.espalier.plan;

/** A cut that cannot run so. */
public class CutRefusedException extends IllegalArgumentException {

    private static final long serialVersionUID = 1L;

    private final Reason reason;

    /** Why. */
    public enum Reason {
        /** It runs along the bone. */
        ALONG_THE_BONE,
        /** The centre of a round cut lies on it. */
        CENTRE_ON_THE_CUT
    }

    CutRefusedException(Reason reason) {
        super("No cut can run so: " + reason);
        this.reason = reason;
    }

    public Reason reason() {
        return reason;
    }
}
