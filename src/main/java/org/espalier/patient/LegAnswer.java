package org.espalier.patient;

/** What was found of a {@link LegSign}. Nothing is an answer too; what was not looked at has none. */
public sealed interface LegAnswer {

    /** As it is kept. */
    String name();

    /** How the knee gives way at the moment of loading. */
    enum Thrust implements LegAnswer {
        NONE,
        VARUS,
        VALGUS
    }

    /** How far the joint opens under the hand, against its own other side. */
    enum Laxity implements LegAnswer {
        NONE,
        /** Up to 5 mm. */
        ONE,
        /** 5 to 10 mm. */
        TWO,
        /** More than 10 mm. */
        THREE
    }

    /** How the kneecap runs. */
    enum Patella implements LegAnswer {
        CENTRED,
        APPREHENSION,
        SUBLUXES,
        DISLOCATES,
        /** Lies outside the groove and cannot be brought back. */
        DISLOCATED
    }

    /** When the leg hurts. */
    enum Pain implements LegAnswer {
        NONE,
        AFTER_EFFORT,
        EVERY_DAY,
        AT_NIGHT
    }

    /** Of the peroneal and tibial nerves. */
    enum Nerve implements LegAnswer {
        INTACT,
        SENSATION_CHANGED,
        WEAK,
        FOOT_DROP
    }

    /** At the foot. */
    enum Pulse implements LegAnswer {
        FELT,
        WEAK,
        NOT_FELT
    }
}
