package org.espalier.patient;

/** What the family says of the child's sleep. */
public enum SleepSymptoms {
    NONE,
    SNORING,
    PAUSES,
    SLEEPY_BY_DAY,
    /** More than one of snoring, pauses and sleepiness. */
    SEVERAL
}
