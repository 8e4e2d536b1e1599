package org.espalier.science.quantity;

import java.time.Clock;
import java.time.LocalDate;
import org.espalier.science.statistics.Interval;
import org.springframework.core.Ordered;

/** Breaks the rules of science: knows what stands above it, a framework, and the day. */
record CarelessQuantity(Interval above, Clock clock, Ordered framework) {

    LocalDate today() {
        return LocalDate.now(clock);
    }
}
