package org.espalier.demo;

import java.time.LocalDate;
import java.util.List;
import java.util.OptionalInt;
import org.espalier.science.quantity.Sex;

/**
 * The course of one invented child.
 *
 * @param number local number at the hospital
 * @param ageNowMonths age on the day the demonstration was first started
 * @param build how plump it is drawn, and what share of the usual length its legs have
 * @param filming how its films were taken
 * @param visits with a film, the earliest first
 * @param deeds operations, the earliest first
 * @param plans operations that wait
 * @param missed ages in months at which it was expected and was not brought
 */
record DemoStory(
        DemoHospital hospital,
        String number,
        String familyName,
        String givenName,
        Sex sex,
        int ageNowMonths,
        DemoDiagnosis diagnosis,
        Build build,
        Filming filming,
        List<DemoVisit> visits,
        List<DemoDeed> deeds,
        List<DemoPlan> plans,
        List<Integer> missed) {

    private static final int SPREAD_DAYS = 19;

    /**
     * @param plump 1 slim to 1.8 very heavy
     * @param legShare 1 for legs of the usual length
     */
    record Build(double plump, double legShare) {

        static final Build USUAL = new Build(1.1, 1);
    }

    /** How the films of a child were taken. */
    enum Filming {
        BOTH_LEGS,
        /** Both legs, of years ago: a small copy is kept. */
        COPIED,
        /** Too wide for one cassette: each leg on a film of its own, on the same day. */
        EACH_LEG_ALONE,
        /** Both legs standing, and at last one knee with contrast in the joint. */
        ARTHROGRAM_LAST
    }

    DemoStory {
        visits = List.copyOf(visits);
        deeds = List.copyOf(deeds);
        plans = List.copyOf(plans);
        missed = List.copyOf(missed);
    }

    /** A visit of these days: the leg as it was last, the film just sent. */
    DemoVisit today() {
        DemoVisit last = visits.getLast();
        return new DemoVisit(
                ageNowMonths - 1,
                last.right(),
                last.left(),
                last.heightCm(),
                last.weightKg(),
                OptionalInt.empty(),
                false);
    }

    /** Born so that the child has the told age on the first day of the demonstration. */
    LocalDate birthDate(LocalDate firstDay) {
        return firstDay.minusMonths(ageNowMonths).minusDays(spread(0));
    }

    /** The day of a visit: always a weekday. */
    LocalDate dayOf(DemoVisit visit, LocalDate firstDay) {
        return dayAt(visit.ageMonths(), firstDay);
    }

    /** A weekday at that age. */
    LocalDate dayAt(int ageMonths, LocalDate firstDay) {
        LocalDate day = birthDate(firstDay).plusMonths(ageMonths).plusDays(spread(ageMonths));
        return switch (day.getDayOfWeek()) {
            case SATURDAY -> day.minusDays(1);
            case SUNDAY -> day.plusDays(1);
            default -> day;
        };
    }

    private int spread(int salt) {
        return Math.floorMod(number.hashCode() * 31 + salt * 7, SPREAD_DAYS);
    }
}
