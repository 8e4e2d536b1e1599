package org.espalier.treatment;

import java.time.LocalDate;
import java.util.Optional;

/**
 * Why a physis stands where it stands.
 *
 * @param on the day of what decided it; empty while nothing has happened yet
 * @param side the side of the bone it is about
 * @param reader who read the film it rests on
 */
public record Why(Reason reason, Optional<LocalDate> on, Optional<PlateSide> side, Optional<String> reader) {

    /** What decided it. */
    public enum Reason {
        FOLLOWED,
        BRACE_ON,
        PLANNED,
        LISTED,
        PLATE_HOLDS,
        STAPLE_HOLDS,
        TRANSPHYSEAL_SCREW_HOLDS,
        ARRESTED_ON_ONE_SIDE,
        ARRESTED,
        METAPHYSEAL_SCREW_OUT,
        EPIPHYSEAL_SCREW_OUT,
        BOTH_SCREWS_OUT,
        BROKEN,
        NOTHING_HOLDS,
        SEEN_CLOSED,
        SEEN_CLOSED_IMPLANT_STAYS,
        SEEN_CLOSED_IMPLANT_COMES_OUT
    }

    static Why of(Reason reason, LocalDate on) {
        return new Why(reason, Optional.of(on), Optional.empty(), Optional.empty());
    }

    static Why followed() {
        return new Why(Reason.FOLLOWED, Optional.empty(), Optional.empty(), Optional.empty());
    }

    static Why of(Tether tether, TetherPeriod period) {
        return new Why(reason(tether, period), Optional.of(period.from()), period.side(), Optional.empty());
    }

    static Why of(Maturity closed) {
        var reason = closed.retainedToldOn() != null
                ? Reason.SEEN_CLOSED_IMPLANT_STAYS
                : closed.removeBy() != null ? Reason.SEEN_CLOSED_IMPLANT_COMES_OUT : Reason.SEEN_CLOSED;
        return new Why(reason, Optional.of(closed.on()), Optional.empty(), Optional.of(closed.reader()));
    }

    private static Reason reason(Tether tether, TetherPeriod period) {
        return switch (period.hold()) {
            case METAPHYSEAL_SCREW_OUT -> Reason.METAPHYSEAL_SCREW_OUT;
            case EPIPHYSEAL_SCREW_OUT -> Reason.EPIPHYSEAL_SCREW_OUT;
            case BOTH_SCREWS_OUT -> Reason.BOTH_SCREWS_OUT;
            case BROKEN -> Reason.BROKEN;
            case HOLDS ->
                switch (tether.placed()) {
                    case STAPLE_PLACED -> Reason.STAPLE_HOLDS;
                    case TRANSPHYSEAL_SCREW_PLACED -> Reason.TRANSPHYSEAL_SCREW_HOLDS;
                    case PERMANENT_HEMIEPIPHYSIODESIS -> Reason.ARRESTED_ON_ONE_SIDE;
                    case PERMANENT_EPIPHYSIODESIS -> Reason.ARRESTED;
                    default -> Reason.PLATE_HOLDS;
                };
        };
    }
}
