package org.espalier.prognosis;

import java.util.Optional;
import org.espalier.patient.ChildId;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Forecasts as they were given, for whoever asks whether they were honest. */
@Service
@Transactional
public class KeptForecastService {

    private final FactReader facts;
    private final JdbcForecastRepository forecasts;

    KeptForecastService(FactReader facts, JdbcForecastRepository forecasts) {
        this.facts = facts;
        this.forecasts = forecasts;
    }

    /** Empty when there is no such child that the caller may see. */
    public Optional<KeptForecasts> of(ChildId child) {
        return facts.of(child).map(read -> new KeptForecasts(read, forecasts.of(child)));
    }
}
