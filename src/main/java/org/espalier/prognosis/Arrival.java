package org.espalier.prognosis;

import java.time.LocalDate;
import java.util.Optional;

/**
 * When a target is reached. A date never stands without its interval and the chance that it never comes.
 *
 * @param middle as likely before as after, never reaching counted as after; empty where it more likely never comes
 * @param earliest one in twenty comes earlier
 * @param latest nineteen in twenty have come; empty where more than one in twenty never do
 * @param never the chance that it never comes before growth ends, 0 to 1
 */
public record Arrival(
        Optional<LocalDate> earliest, Optional<LocalDate> middle, Optional<LocalDate> latest, double never) {}
