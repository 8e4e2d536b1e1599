package org.espalier.treatment;

import java.time.LocalDate;
import java.util.Optional;

/**
 * A time in which what is in place held, or did not, in one way.
 *
 * @param to empty while it lasts
 * @param side the side of the bone in that time; empty where the whole physis is held
 */
public record TetherPeriod(LocalDate from, Optional<LocalDate> to, Hold hold, Optional<PlateSide> side) {

    public boolean isOn(LocalDate day) {
        return !day.isBefore(from) && to.filter(end -> !day.isBefore(end)).isEmpty();
    }
}
