package org.espalier.opinion;

/**
 * What a colleague advises.
 *
 * @param place where, in words
 * @param due when, in words
 * @param changeMind what would change their mind
 * @param text whatever else
 */
public record OpinionData(Advice advice, String place, String due, Sureness sure, String changeMind, String text) {

    private static final int SHORT = 400;
    private static final int LONG = 2000;

    public OpinionData {
        place = tidy(place, SHORT);
        due = tidy(due, SHORT);
        changeMind = tidy(changeMind, LONG);
        text = tidy(text, Question.LENGTH);
    }

    private static String tidy(String text, int longest) {
        var tidy = text.strip();
        if (tidy.length() > longest) {
            throw new IllegalArgumentException("Longer than " + longest + " characters");
        }
        return tidy;
    }
}
