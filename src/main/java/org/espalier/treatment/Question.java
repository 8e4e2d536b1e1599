package org.espalier.treatment;

import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * What can be said of a procedure beside the six facts. Without an answer it is not recorded; nothing defaults to yes.
 */
public enum Question {
    SIDE_MARKED(Group.BEFORE),
    PHYSIS_MARKED(Group.BEFORE),
    DIRECTION_SAID(Group.BEFORE),
    BONE_AGE_LOOKED_AT(Group.BEFORE),
    METABOLIC_ASKED(Group.BEFORE),
    AIRWAY_ASKED(Group.BEFORE),
    PREGNANCY_ASKED(Group.BEFORE),
    METAL_ALLERGY_ASKED(Group.BEFORE),
    SIZES_AND_DRIVERS_THERE(Group.BEFORE),
    OLD_PLATE_DRIVER_THERE(Group.BEFORE),
    BROKEN_SCREW_SET_THERE(Group.BEFORE),
    INTERPRETER_ARRANGED(Group.BEFORE),
    CONSENT_BY_WHO_MAY(Group.BEFORE),

    TWO_PLANE_PICTURE(Group.AFTER),
    SCREWS_CLEAR(Group.AFTER),
    WEIGHT_BEARING_SAID(Group.AFTER),
    WOUND_VISIT_SET(Group.AFTER),
    FAMILY_REPEATED_DATE(Group.AFTER),
    PLATE_CARD_GIVEN(Group.AFTER),

    GUIDE_PIN_MID_EPIPHYSIS(Group.PLATE),
    PLATE_MID_SAGITTAL(Group.PLATE),
    EXTRAPERIOSTEAL(Group.PLATE),
    PLATE_BENT_TO_BONE(Group.PLATE),
    SCREWS_COUNTERSUNK(Group.PLATE),
    TIGHTENED_ALTERNATELY(Group.PLATE),
    NO_EXPOSED_SHANK(Group.PLATE),

    OSTEOTOMY_LEVEL(Group.OSTEOTOMY_WORDS),
    OSTEOTOMY_KIND(Group.OSTEOTOMY_WORDS),
    FIXATION(Group.OSTEOTOMY_WORDS),
    FIBULA_CUT(Group.OSTEOTOMY),
    UNDERCORRECTION_CONSIDERED(Group.OSTEOTOMY),
    FASCIOTOMY(Group.OSTEOTOMY);

    /** To what a question belongs. */
    public enum Group {
        BEFORE,
        AFTER,
        PLATE,
        OSTEOTOMY,
        /** Answered in words, not by yes or no. */
        OSTEOTOMY_WORDS
    }

    /** The answers to a question that is not answered in words. */
    public enum Answer {
        YES,
        NO,
        /** It does not bear on this child. */
        NOT_NEEDED
    }

    private static final int LONGEST = 120;

    private final Group group;

    Question(Group group) {
        this.group = group;
    }

    public boolean isAnsweredInWords() {
        return group == Group.OSTEOTOMY_WORDS;
    }

    /** The questions of the groups, in their order. */
    public static List<Question> of(Group... groups) {
        return Stream.of(values())
                .filter(question -> List.of(groups).contains(question.group))
                .toList();
    }

    static Map<Question, String> tidy(Map<Question, String> answers) {
        var kept = new EnumMap<Question, String>(Question.class);
        answers.forEach((question, text) -> {
            var tidy = Written.tidy(text, LONGEST);
            if (tidy != null) {
                kept.put(
                        question,
                        question.isAnsweredInWords()
                                ? tidy
                                : Answer.valueOf(tidy).name());
            }
        });
        return Collections.unmodifiableMap(kept);
    }
}
