package org.espalier.prognosis;

import java.time.Instant;
import java.util.UUID;
import org.espalier.science.forecast.CentreRates;

/**
 * What a centre's own limbs said on a night.
 *
 * @param learntFrom changes with the limbs they were learnt from
 */
public record LearntRates(UUID id, CentreRates rates, String learntFrom, Instant at) {}
