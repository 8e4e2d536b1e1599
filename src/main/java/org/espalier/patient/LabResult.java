package org.espalier.patient;

import java.math.BigDecimal;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * A value from a laboratory, as it was reported.
 *
 * @param on the day the sample was taken
 * @param value in the unit, above 0 to 99999, at most two decimals
 * @param range the laboratory's own reference range in its own words; null when it was not given
 */
public record LabResult(
        LocalDate on,
        LabAnalyte analyte,
        BigDecimal value,
        LabUnit unit,
        @Nullable String range) implements Finding {

    /** The longest range that is kept. */
    public static final int RANGE_LENGTH = 60;

    private static final BigDecimal GREATEST = BigDecimal.valueOf(99999);
    private static final int DECIMALS = 2;

    public LabResult {
        value = value.stripTrailingZeros();
        range = range == null || range.isBlank() ? null : range.strip();
        if (value.signum() <= 0 || value.compareTo(GREATEST) > 0 || value.scale() > DECIMALS) {
            throw new IllegalArgumentException("A value lies above 0 and has two decimals at most, not " + value);
        }
        if (!analyte.units().contains(unit)) {
            throw new IllegalArgumentException(analyte + " is not reported in " + unit);
        }
        if (range != null && range.length() > RANGE_LENGTH) {
            throw new IllegalArgumentException("Longer than " + RANGE_LENGTH + " characters");
        }
    }
}
