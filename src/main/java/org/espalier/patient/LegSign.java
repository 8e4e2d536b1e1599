package org.espalier.patient;

import java.util.Arrays;
import java.util.List;

/** A sign looked for on a leg, with the answers it can have. */
public enum LegSign {
    THRUST(LegAnswer.Thrust.values()),
    /** Opening of the lateral side. */
    LATERAL_LAXITY(LegAnswer.Laxity.values()),
    /** Opening of the medial side. */
    MEDIAL_LAXITY(LegAnswer.Laxity.values()),
    PATELLA(LegAnswer.Patella.values()),
    PAIN(LegAnswer.Pain.values()),
    NERVE(LegAnswer.Nerve.values()),
    PULSE(LegAnswer.Pulse.values());

    private final List<LegAnswer> answers;

    LegSign(LegAnswer... answers) {
        this.answers = List.copyOf(Arrays.asList(answers));
    }

    /** The answers, nothing found first. */
    public List<LegAnswer> answers() {
        return answers;
    }

    /** The answer that is kept under the name. */
    public LegAnswer answer(String name) {
        return answers.stream()
                .filter(one -> one.name().equals(name))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException(this + " is not answered by " + name));
    }
}
