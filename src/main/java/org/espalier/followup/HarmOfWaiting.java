package org.espalier.followup;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Comparator;
import java.util.Optional;

/**
 * Ranks children by the harm of waiting, in degrees at stake by the next month. Unknown stands above every number, and
 * a screw in doubt above every forecast; the other two are degrees: past the target, or out of reach because the window
 * closed. All judged, not published.
 */
final class HarmOfWaiting {

    /** No film since the plate is worse than any number. */
    private static final double UNKNOWN = 1000;

    /** A tether that may not hold leaves growth unused, or used unevenly. */
    private static final double SCREW = 100;

    /** Correction that a month of growth gives: mean of both bones about the knee. */
    private static final double DEGREES_A_MONTH = 0.85;

    private static final double WINDOW_MONTHS = 12;
    private static final double DAYS_OF_A_MONTH = 30.4375;

    private HarmOfWaiting() {}

    static Harm of(CareFacts care, Limits limits) {
        return care.plates().stream()
                .map(plate -> of(care, plate, limits))
                .max(Comparator.comparingDouble(Harm::degrees))
                .orElse(Harm.OVERDUE);
    }

    private static Harm of(CareFacts care, PlateFacts plate, Limits limits) {
        boolean filmIsLate = plate.since().plusMonths(limits.firstFilmMonths()).isBefore(care.today());
        if (plate.isUnknownSincePlate() && filmIsLate) {
            return Harm.of(Harm.Kind.UNKNOWN_SINCE_PLATE, UNKNOWN + months(plate.since(), care.today()), plate.plate());
        }
        if (plate.screwBroken()) {
            return Harm.of(Harm.Kind.SCREW, SCREW + months(care.lastLook(), care.today()), plate.plate());
        }
        var past = past(care, plate);
        var window = window(care, plate);
        return past.degrees() >= window.degrees() ? past : window;
    }

    private static Harm past(CareFacts care, PlateFacts plate) {
        var theatre = care.afterWait(care.today().plusMonths(1));
        return plate.outlook()
                .filter(outlook -> plate.following().hasPlate())
                .map(outlook -> outlook.past(theatre))
                .filter(past -> past.degrees() > 0)
                .map(past ->
                        new Harm(Harm.Kind.PAST_TARGET, past.degrees(), Optional.of(plate.plate()), Optional.of(past)))
                .orElse(Harm.OVERDUE);
    }

    /** What is lost when nothing is done until the next month and theatre after it. */
    private static Harm window(CareFacts care, PlateFacts plate) {
        return plate.window()
                .filter(closes -> !plate.following().hasPlate() && plate.following() != Following.MATURE)
                .map(closes -> WINDOW_MONTHS - months(care.today(), care.beforeWait(closes)))
                .filter(lost -> lost > 0)
                .map(lost -> Harm.of(Harm.Kind.WINDOW, DEGREES_A_MONTH * Math.min(lost, WINDOW_MONTHS), plate.plate()))
                .orElse(Harm.OVERDUE);
    }

    private static double months(LocalDate from, LocalDate to) {
        return ChronoUnit.DAYS.between(from, to) / DAYS_OF_A_MONTH;
    }
}
