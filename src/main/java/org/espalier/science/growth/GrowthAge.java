package org.espalier.science.growth;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Optional;
import org.espalier.science.quantity.Age;
import org.espalier.science.quantity.Sex;

/**
 * Which of a child's ages growth is reckoned by on a day.
 *
 * <pre>
 * girls under 8, boys under 10                       age since birth
 * from then on, bone age not older than a year       bone age
 * over the 95th centile of body mass, from ten on    the older of both, so that the earlier date is shown; a bone age
 *                                                    not older than six months is wanted before a window is shown
 * </pre>
 *
 * <p>Source: rules of this program (judged); bone age predicts better than age since birth (441 segments, J Bone Joint
 * Surg Am 2021), heavy children run ahead in it.
 *
 * @param sex whose tables are asked
 * @param day the day reckoned from
 * @param byBirth age since birth
 * @param age the age to reckon by
 * @param basis which one that is
 * @param isBoneAgeWanted whether a newer bone age is needed before a window may be shown
 */
public record GrowthAge(Sex sex, LocalDate day, Age byBirth, Age age, Basis basis, boolean isBoneAgeWanted) {

    /** Above this centile of body mass for age a child counts as heavy. */
    public static final double HEAVY_CENTILE = 95;

    /** From this age on the rule for heavy children holds. */
    public static final Age HEAVY_FROM = Age.ofYears(10);

    private static final Age GIRLS_BY_BONE = Age.ofYears(8);
    private static final Age BOYS_BY_BONE = Age.ofYears(10);
    private static final int MONTHS_A_BONE_AGE_HOLDS = 12;
    private static final int MONTHS_IN_HEAVY_CHILDREN = 6;
    private static final double DAYS_IN_A_YEAR = 365.25;

    /** Which age it is. */
    public enum Basis {
        /** Age since birth. */
        BIRTH,
        /** Bone age. */
        BONE_AGE,
        /** The older of both, in a heavy child. */
        OLDER_OF_BOTH
    }

    /**
     * The age to reckon by.
     *
     * @param birth day of birth, not after the day
     * @param bone the last bone age read
     * @param size where the last body mass index stands
     * @throws IllegalArgumentException if the day lies before birth
     */
    public static GrowthAge of(
            Sex sex, LocalDate birth, LocalDate day, Optional<SkeletalAge> bone, Optional<Standing> size) {
        Age byBirth = Age.between(birth, day);
        boolean heavy = byBirth.compareTo(HEAVY_FROM) >= 0
                && size.filter(GrowthAge::isHeavy).isPresent();
        Optional<Age> byBone = bone.filter(
                        read -> read.isWithinMonths(heavy ? MONTHS_IN_HEAVY_CHILDREN : MONTHS_A_BONE_AGE_HOLDS, day))
                .map(read -> read.onDay(day));
        if (heavy) {
            Age older = byBone.filter(age -> age.compareTo(byBirth) > 0).orElse(byBirth);
            return new GrowthAge(sex, day, byBirth, older, Basis.OLDER_OF_BOTH, byBone.isEmpty());
        }
        Age from = sex == Sex.FEMALE ? GIRLS_BY_BONE : BOYS_BY_BONE;
        return byBone.filter(age -> byBirth.compareTo(from) >= 0)
                .map(age -> new GrowthAge(sex, day, byBirth, age, Basis.BONE_AGE, false))
                .orElseGet(() -> new GrowthAge(sex, day, byBirth, byBirth, Basis.BIRTH, false));
    }

    /**
     * The day on which this age is or was reached, a year a year.
     *
     * @param years by the same count as {@link #age}
     */
    public LocalDate dayAt(double years) {
        return day.plusDays(Math.round((years - age.decimalYears()) * DAYS_IN_A_YEAR));
    }

    static double yearsBetween(LocalDate from, LocalDate to) {
        return ChronoUnit.DAYS.between(from, to) / DAYS_IN_A_YEAR;
    }

    private static boolean isHeavy(Standing standing) {
        return standing.centile() > HEAVY_CENTILE;
    }
}
