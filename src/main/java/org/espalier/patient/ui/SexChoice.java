package org.espalier.patient.ui;

import org.espalier.science.quantity.Sex;
import org.jspecify.annotations.Nullable;

/** The sex as it is asked for: not known is an answer too. */
enum SexChoice {
    FEMALE(Sex.FEMALE),
    MALE(Sex.MALE),
    NOT_KNOWN(null);

    private final @Nullable Sex sex;

    SexChoice(@Nullable Sex sex) {
        this.sex = sex;
    }

    @Nullable
    Sex sex() {
        return sex;
    }

    static SexChoice of(@Nullable Sex sex) {
        return sex == null ? NOT_KNOWN : sex == Sex.FEMALE ? FEMALE : MALE;
    }
}
