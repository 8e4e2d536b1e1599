package org.espalier.prognosis;

import org.espalier.science.forecast.Deformity;

/**
 * How far past its target an angle is on a day; nothing before the target counts.
 *
 * @param into the deformity it goes into
 * @param degrees in the middle, not below 0
 * @param lowDegrees of twenty such limbs one is less far, not below 0
 * @param highDegrees of twenty such limbs one is further, not below 0
 */
public record Past(Deformity into, double degrees, double lowDegrees, double highDegrees) {}
