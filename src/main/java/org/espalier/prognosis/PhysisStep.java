package org.espalier.prognosis;

/** What could be done at a physis of the knee. */
public enum PhysisStep {
    /** Whatever is in stays in, and what is out stays out. */
    AS_IT_IS,
    /** A plate today, on the side that corrects what is left to the target. */
    PLATE_TODAY,
    /** What holds it is exchanged today for the same, whole. */
    EXCHANGED_TODAY,
    /** Whatever is in comes out today. */
    OUT_TODAY,
    /** It comes out on the day on which the target is as likely reached as not. */
    OUT_AT_TARGET,
    /** A screw comes out today, the plate stays. */
    SCREW_OUT_TODAY,
    /** The plate goes to the other side of the bone today. */
    MOVED_TODAY
}
