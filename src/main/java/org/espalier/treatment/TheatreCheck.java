package org.espalier.treatment;

import java.time.LocalDate;
import java.util.Map;

/**
 * What was asked before or after an operation. A question without an answer was not recorded.
 */
public record TheatreCheck(LocalDate on, Phase phase, Map<Question, String> answers) implements TreatmentFact {

    /** When it was asked. */
    public enum Phase {
        BEFORE,
        AFTER
    }

    public TheatreCheck {
        answers = Question.tidy(answers);
    }
}
