package org.espalier.outcomes;

import java.util.Optional;

/** By what hospitals are laid side by side: how the growth plate ended that stands for a child. */
public enum Measure {
    STRAIGHT,
    OVERSHOT,
    /** Taken out, or growth ended, before the band was reached. */
    SHORT,
    FAILED;

    /** Empty for an end that no film tells of. */
    static Optional<Measure> of(Came came) {
        return switch (came) {
            case STRAIGHT -> Optional.of(STRAIGHT);
            case OVERSHOT -> Optional.of(OVERSHOT);
            case SHORT, GROWTH_ENDED -> Optional.of(SHORT);
            case FAILED -> Optional.of(FAILED);
            case NOT_FILMED -> Optional.empty();
        };
    }
}
