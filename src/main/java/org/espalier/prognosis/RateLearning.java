package org.espalier.prognosis;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Clock;
import java.time.temporal.ChronoUnit;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import org.espalier.access.SiteId;
import org.espalier.science.forecast.CentreLearning;
import org.espalier.science.forecast.CentreRates;
import org.espalier.science.forecast.Rate;
import org.springframework.stereotype.Component;
import tools.jackson.databind.json.JsonMapper;

/** Learns a centre's rates and film noise from its own limbs, as their forecasts were last made from. */
@Component
class RateLearning {

    /** The newest plates a centre learns from; more change little and cost time. */
    private static final int MOST_LIMBS = 400;

    /** The part of what a rate is still uncertain by that one rate at least must move before new ones are kept. */
    private static final double LEAST_MOVE = 0.5;

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
        var learnt = learn(limbs, before);
        if (before.filter(kept -> isNearlyThe(kept.rates(), learnt)).isEmpty()) {
            rates.add(site, learnt, from, clock.instant().truncatedTo(ChronoUnit.MICROS));
        }
    }

    /** Rates that moved by less than they are uncertain by are not worth forecasting everybody anew. */
    private static boolean isNearlyThe(CentreRates before, CentreRates after) {
        return Arrays.stream(Rate.values())
                .allMatch(rate ->
                        Math.abs(Math.log(after.value(rate) / before.value(rate))) <= LEAST_MOVE * after.spread(rate));
    }

    private static CentreRates learn(List<ForecastInputs> limbs, Optional<LearntRates> before) {
        return CentreLearning.learn(
                limbs.stream().map(ForecastInputs::toPhysis).toList(),
                before.map(LearntRates::rates).orElseGet(CentreRates::published));
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
