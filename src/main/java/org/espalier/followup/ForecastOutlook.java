package org.espalier.followup;

import java.time.LocalDate;
import java.util.Optional;
import org.espalier.prognosis.Forecast;
import org.espalier.prognosis.Past;

/** Where an angle is going by the forecast of the plate that is in. */
record ForecastOutlook(Forecast forecast) implements Outlook {

    @Override
    public double chancePast(LocalDate day, double degrees) {
        return forecast.chancePast(day, degrees);
    }

    @Override
    public Past past(LocalDate day) {
        return forecast.past(day);
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
