package org.espalier.prognosis;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What a forecast said, as it is kept to be judged later.
 *
 * @param from the day it looks ahead from
 * @param angles the joint angle on days to come
 * @param films how a film on those days would read
 */
record KeptOutcome(
        LocalDate from,
        double noResponse,
        double hardwareFailed,
        double never,
        @Nullable LocalDate earliest,
        @Nullable LocalDate middle,
        @Nullable LocalDate latest,
        List<KeptAngle> angles,
        List<KeptAngle> films) {

    private static final int[] MONTHS = {0, 1, 2, 3, 4, 6, 9, 12, 18, 24, 36};

    /** The spread on one day, in degrees, at 5, 25, 50, 75 and 95 %. */
    record KeptAngle(LocalDate on, double low90, double low50, double middle, double high50, double high90) {

        private static KeptAngle of(LocalDate on, AngleSpread spread) {
            return new KeptAngle(
                    on,
                    spread.low90().degrees(),
                    spread.low50().degrees(),
                    spread.middle().degrees(),
                    spread.high50().degrees(),
                    spread.high90().degrees());
        }
    }

    static KeptOutcome of(Forecast forecast) {
        var arrival = forecast.arrival();
        var days = Arrays.stream(MONTHS)
                .mapToObj(forecast.from()::plusMonths)
                .filter(day -> !day.isAfter(forecast.growthEnds()))
                .toList();
        return new KeptOutcome(
                forecast.from(),
                forecast.noResponse(),
                forecast.hardwareFailed(),
                arrival.never(),
                arrival.earliest().orElse(null),
                arrival.middle().orElse(null),
                arrival.latest().orElse(null),
                days.stream().map(day -> KeptAngle.of(day, forecast.angle(day))).toList(),
                days.stream().map(day -> KeptAngle.of(day, forecast.film(day))).toList());
    }
}
