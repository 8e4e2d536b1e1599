package org.espalier.plan;

import java.time.LocalDate;
import org.espalier.kit.DateText;
import org.espalier.kit.QuantityText;
import org.espalier.kit.Texts;
import org.espalier.science.quantity.Angle;
import org.jspecify.annotations.Nullable;

/**
 * What the surgeon means to do and expects of it, said before: so that it can be asked again afterwards.
 *
 * @param aim what is to be reached, in the surgeon's words
 * @param expectation what will happen, in the surgeon's words
 * @param expectedHka HKA on that day, + varus, −30° to 30°; null when not said
 * @param expectedBy the day; null when not said
 */
public record Intent(
        Option meant,
        String aim,
        String expectation,
        @Nullable Angle expectedHka,
        @Nullable LocalDate expectedBy) {

    /** The longest aim and the longest expectation that are kept. */
    public static final int LENGTH = 400;

    private static final int SHORTEST = 3;
    private static final double FURTHEST = 30;

    public Intent {
        aim = tidy(aim);
        expectation = tidy(expectation);
        if (expectedHka != null && Math.abs(expectedHka.degrees()) > FURTHEST) {
            throw new IllegalArgumentException("No limb is expected at " + expectedHka);
        }
        if (expectedHka != null && expectedBy == null) {
            throw new IllegalArgumentException("An expected angle needs its day");
        }
    }

    /** Whether a text is long enough to be understood later, and short enough to be kept. */
    public static boolean isSaid(String text) {
        int length = text.strip().length();
        return length >= SHORTEST && length <= LENGTH;
    }

    /** What was meant, to be reached and expected, in a sentence each. */
    public String inWords() {
        var words = Texts.text("plan.saved.intent", Texts.of(meant), aim, expectation);
        return expectedHka == null || expectedBy == null
                ? words
                : Texts.text(
                        "plan.saved.expected", words, QuantityText.ofDeviation(expectedHka), DateText.of(expectedBy));
    }

    private static String tidy(String text) {
        if (!isSaid(text)) {
            throw new IllegalArgumentException("An aim and an expectation have " + SHORTEST + " to " + LENGTH
                    + " characters, not " + text.strip().length());
        }
        return text.strip();
    }
}
