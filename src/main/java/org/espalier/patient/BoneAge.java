package org.espalier.patient;

import java.time.LocalDate;
import org.espalier.science.quantity.Age;
import org.jspecify.annotations.Nullable;

/**
 * How far the skeleton has matured.
 *
 * @param on the day of the picture that was read
 * @param age up to 20 years, in whole months
 * @param reader who read the picture; null when it was who wrote it down
 */
public record BoneAge(
        LocalDate on,
        Age age,
        BoneAgeMethod method,
        @Nullable String reader) implements Finding {

    /** The longest name of a reader that is kept. */
    public static final int NAME_LENGTH = 120;

    private static final int OLDEST_MONTHS = 240;

    public BoneAge {
        reader = reader == null || reader.isBlank() ? null : reader.strip();
        if (reader != null && reader.length() > NAME_LENGTH) {
            throw new IllegalArgumentException("Longer than " + NAME_LENGTH + " characters");
        }
        if (age.completedMonths() > OLDEST_MONTHS || age.daysBeyond() != 0) {
            throw new IllegalArgumentException("A bone age is a number of whole months up to 240, not " + age);
        }
    }

    /** Read by who wrote it down. */
    public BoneAge(LocalDate on, Age age, BoneAgeMethod method) {
        this(on, age, method, null);
    }
}
