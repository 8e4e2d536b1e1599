package org.espalier.science.quantity;

import java.util.Optional;

/** The side of a limb, the child's own right or left. */
public enum Side {
    /** The child's right. */
    RIGHT("R"),
    /** The child's left. */
    LEFT("L");

    private final String letter;

    Side(String letter) {
        this.letter = letter;
    }

    /** The letter used in files: R or L. */
    public String letter() {
        return letter;
    }

    /** The other side. */
    public Side opposite() {
        return this == RIGHT ? LEFT : RIGHT;
    }

    /**
     * The side a file's letter means.
     *
     * @param letter R or L; anything else means no side
     */
    public static Optional<Side> ofLetter(String letter) {
        return switch (letter) {
            case "R" -> Optional.of(RIGHT);
            case "L" -> Optional.of(LEFT);
            default -> Optional.empty();
        };
    }
}
