package org.espalier.reading;

import java.util.Optional;
import java.util.OptionalDouble;
import org.espalier.science.alignment.Measured;
import org.espalier.science.alignment.Quantity;
import org.espalier.science.exposure.Effect;
import org.espalier.science.quantity.Side;
import org.jspecify.annotations.Nullable;

/**
 * One quantity of one limb as read from a film: its value in the quantity's unit, or why there is none.
 *
 * @param doubtful whether the value is shown in grey, since how the film was taken makes it doubtful
 * @param doubt why it is, as far as it follows from how the film was taken
 */
public record ReadNumber(
        Side side,
        Quantity quantity,
        OptionalDouble value,
        @Nullable Absence absence,
        boolean doubtful,
        Effect.@Nullable Greyed doubt) {

    /** Why there is no value. */
    public enum Absence {
        LANDMARKS_MISSING,
        UNCALIBRATED,
        POINTS_COINCIDE,
        LINES_PARALLEL,
        LATERAL_UNCLEAR,
        ENDS_EXCHANGED,
        FLEXED,
        SUPINE,
        UNOSSIFIED,
        WRONG_VIEW,
        MOVED;

        static Absence of(Measured.Reason reason) {
            return valueOf(reason.name());
        }
    }

    static ReadNumber of(Side side, Quantity quantity, Measured measured) {
        return switch (measured) {
            case Measured.Value told -> ofSigned(side, quantity, told.value(), false);
            case Measured.Absent none ->
                new ReadNumber(side, quantity, OptionalDouble.empty(), Absence.of(none.reason()), false, null);
        };
    }

    /** A number as it was signed. */
    static ReadNumber ofSigned(Side side, Quantity quantity, double value, boolean doubtful) {
        return new ReadNumber(side, quantity, OptionalDouble.of(value), null, doubtful, null);
    }

    /** What the way its film was taken leaves of it. */
    ReadNumber under(Effect effect) {
        return switch (effect) {
            case Effect.Shown shown -> this;
            case Effect.Greyed greyed -> inDoubt(greyed);
            case Effect.Withheld(var reason) -> withheld(Absence.valueOf(reason.name()));
        };
    }

    ReadNumber withheld(Absence reason) {
        return value.isPresent() ? new ReadNumber(side, quantity, OptionalDouble.empty(), reason, false, null) : this;
    }

    /** In doubt, not because of how the film was taken. */
    ReadNumber inDoubt() {
        return value.isPresent() ? new ReadNumber(side, quantity, value, absence, true, doubt) : this;
    }

    private ReadNumber inDoubt(Effect.Greyed greyed) {
        return value.isPresent() ? new ReadNumber(side, quantity, value, absence, true, greyed) : this;
    }

    boolean isOf(ReadNumber other) {
        return side == other.side && quantity == other.quantity;
    }

    /** As it was signed, with the reason of its doubt as another computation of it tells. */
    ReadNumber explainedBy(ReadNumber other) {
        return new ReadNumber(side, quantity, value, absence, doubtful, doubtful ? other.doubt : null);
    }

    public Optional<Effect.Greyed> reasonOfDoubt() {
        return Optional.ofNullable(doubt);
    }

    public Optional<Absence> reasonOfAbsence() {
        return Optional.ofNullable(absence);
    }
}
