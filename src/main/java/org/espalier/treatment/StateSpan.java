package org.espalier.treatment;

import java.time.LocalDate;
import java.util.Optional;

/**
 * A time in which a physis stood in one state.
 *
 * @param from empty for the first, which nothing began
 */
public record StateSpan(PhysisState state, Optional<LocalDate> from, Why why) {}
