package org.espalier.reading;

import java.util.Optional;
import java.util.OptionalDouble;
import org.espalier.science.alignment.Measured;
import org.espalier.science.alignment.Quantity;
import org.espalier.science.quantity.Side;
import org.jspecify.annotations.Nullable;

/**
 * One quantity of one limb as read from a film: its value in the quantity's unit, or why there is none.
 *
 * @param doubtful whether the knee was so flexed that the value says little of the bones
 */
public record ReadNumber(
        Side side,
        Quantity quantity,
        OptionalDouble value,
        @Nullable Absence absence,
        boolean doubtful) {

    /** Why there is no value. */
    public enum Absence {
        LANDMARKS_MISSING,
        UNCALIBRATED,
        POINTS_COINCIDE,
        LINES_PARALLEL,
        LATERAL_UNCLEAR,
        ENDS_EXCHANGED,
        FLEXED,
        SUPINE;

        static Absence of(Measured.Reason reason) {
            return valueOf(reason.name());
        }
    }

    static ReadNumber of(Side side, Quantity quantity, Measured measured) {
        return switch (measured) {
            case Measured.Value told -> ofSigned(side, quantity, told.value(), false);
            case Measured.Absent none ->
                new ReadNumber(side, quantity, OptionalDouble.empty(), Absence.of(none.reason()), false);
        };
    }

    /** A number as it was signed. */
    static ReadNumber ofSigned(Side side, Quantity quantity, double value, boolean doubtful) {
        return new ReadNumber(side, quantity, OptionalDouble.of(value), null, doubtful);
    }

    ReadNumber withheld(Absence reason) {
        return value.isPresent() ? new ReadNumber(side, quantity, OptionalDouble.empty(), reason, false) : this;
    }

    ReadNumber inDoubt() {
        return value.isPresent() ? new ReadNumber(side, quantity, value, absence, true) : this;
    }

    public Optional<Absence> reasonOfAbsence() {
        return Optional.ofNullable(absence);
    }
}
