package org.espalier.kit;

import java.time.LocalDate;
import java.time.YearMonth;
import org.espalier.science.quantity.Age;
import org.espalier.science.quantity.Sex;
import org.jspecify.annotations.Nullable;

/** Which child a page is about, as far as the reader may know it. */
public sealed interface Who {

    /** Sex; null when not known. */
    @Nullable
    Sex sex();

    /** The age on a day. */
    Age ageOn(LocalDate day);

    /**
     * For those who treat the child.
     *
     * @param givenName null when not known
     * @param localNumber the hospital's own number; null when not known
     */
    record Named(
            String familyName,
            @Nullable String givenName,
            LocalDate birthDate,
            @Nullable Sex sex,
            @Nullable String localNumber)
            implements Who {

        @Override
        public Age ageOn(LocalDate day) {
            return Age.between(birthDate, day);
        }
    }

    /** For everybody else: the age is counted from the first day of the month of birth. */
    record Initialled(
            String initials, YearMonth birthMonth, @Nullable Sex sex) implements Who {

        @Override
        public Age ageOn(LocalDate day) {
            return Age.between(birthMonth.atDay(1), day.withDayOfMonth(1));
        }
    }
}
