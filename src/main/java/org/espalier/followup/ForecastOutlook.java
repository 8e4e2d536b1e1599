package org.espalier.followup;

import java.time.LocalDate;
import java.util.Optional;
import org.espalier.prognosis.Forecast;

/** Where an angle is going by the forecast of the plate that is in. */
record ForecastOutlook(Forecast forecast) implements Outlook {

    @Override
    public double chancePast(LocalDate day, double degrees) {
        return forecast.chancePast(day, degrees);
    }

    @Override
    public double degreesPast(LocalDate day) {
        return forecast.degreesPast(day);
    }

    @Override
    public double change(LocalDate from, LocalDate to) {
        return forecast.change(from, to);
    }

    @Override
    public Optional<LocalDate> arrival() {
        return forecast.arrival().middle();
    }
}
