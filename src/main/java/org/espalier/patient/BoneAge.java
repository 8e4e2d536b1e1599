package org.espalier.patient;

import java.time.LocalDate;
import org.espalier.science.quantity.Age;

/**
 * How far the skeleton has matured.
 *
 * @param on the day of the picture that was read
 * @param age up to 20 years, in whole months
 */
public record BoneAge(LocalDate on, Age age, BoneAgeMethod method) implements Finding {

    private static final int OLDEST_MONTHS = 240;

    public BoneAge {
        if (age.completedMonths() > OLDEST_MONTHS || age.daysBeyond() != 0) {
            throw new IllegalArgumentException("A bone age is a number of whole months up to 240, not " + age);
        }
    }
}
