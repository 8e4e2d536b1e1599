package org.espalier.prognosis;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Clock;
import java.time.temporal.ChronoUnit;
import java.util.HexFormat;
import java.util.List;
import java.util.stream.IntStream;
import org.espalier.access.SiteId;
import org.espalier.science.forecast.CentreLearning;
import org.espalier.science.forecast.CentreRates;
import org.espalier.science.forecast.TetherForecast;
import org.espalier.science.forecast.TetheredPhysis;
import org.springframework.stereotype.Component;
import tools.jackson.databind.json.JsonMapper;

/** Learns a centre's rates and film noise from its own limbs, as their forecasts were last made from. */
@Component
class RateLearning {

    /** The newest plates a centre learns from; more change little and cost time. */
    private static final int MOST_LIMBS = 400;

    /**
     * So many degrees must forecasts of the centre's own limbs move on average before new rates are kept: a fifth of a
     * film's error.
     */
    private static final double LEAST_MOVE = 0.2;

    /** Limbs whose forecasts are compared. */
    private static final int COMPARED = 100;

    /** Where they are compared: so many months after the last film. */
    private static final double AHEAD = 6;

    private static final double[] LEVELS = {0.05, 0.5, 0.95};

    private final JdbcForecastRepository forecasts;
    private final JdbcRatesRepository rates;
    private final JsonMapper json;
    private final Clock clock;

    RateLearning(JdbcForecastRepository forecasts, JdbcRatesRepository rates, JsonMapper json, Clock clock) {
        this.forecasts = forecasts;
        this.rates = rates;
        this.json = json;
        this.clock = clock;
    }

    /** Learns in the running transaction, unless the limbs are the same as the last time. */
    void learn(SiteId site) {
        List<ForecastInputs> limbs = forecasts.lastOfEachPlate(site, MOST_LIMBS).stream()
                .map(ForecastInputs::withoutRates)
                .filter(limb -> limb.films().size() > 1)
                .toList();
        if (limbs.isEmpty()) {
            return;
        }
        var from = hash(limbs);
        var before = rates.newest(site);
        if (before.filter(kept -> kept.learntFrom().equals(from)).isPresent()) {
            return;
        }
        var physes = limbs.stream().map(ForecastInputs::toPhysis).toList();
        var learnt = CentreLearning.learn(physes, before.map(LearntRates::rates).orElseGet(CentreRates::published));
        if (before.filter(kept -> moved(physes, kept.rates(), learnt) < LEAST_MOVE)
                .isEmpty()) {
            rates.add(site, learnt, from, clock.instant().truncatedTo(ChronoUnit.MICROS));
        }
    }

    /**
     * How far forecasts move by other rates: the mean over limbs of the furthest of their ends and middle, in degrees.
     */
    private static double moved(List<TetheredPhysis> limbs, CentreRates before, CentreRates after) {
        return limbs.stream()
                .limit(COMPARED)
                .mapToDouble(limb -> {
                    double[] then = ahead(limb, before);
                    double[] now = ahead(limb, after);
                    return IntStream.range(0, LEVELS.length)
                            .mapToDouble(i -> Math.abs(now[i] - then[i]))
                            .max()
                            .orElseThrow();
                })
                .average()
                .orElse(0);
    }

    private static double[] ahead(TetheredPhysis limb, CentreRates rates) {
        var forecast = TetherForecast.of(limb, rates);
        return forecast.film(forecast.from() + AHEAD).quantiles(LEVELS);
    }

    private String hash(List<ForecastInputs> limbs) {
        return HexFormat.of().formatHex(sha256(json.writeValueAsBytes(limbs)));
    }

    private static byte[] sha256(byte[] bytes) {
        try {
            return MessageDigest.getInstance("SHA-256").digest(bytes);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }
}
