package org.espalier.science.planning;

import org.espalier.science.quantity.Angle;
import org.espalier.science.quantity.Length;

/**
 * The base of a wedge by the four formulas in use, which differ: each is named wherever its figure is shown.
 *
 * <p>Source: plane geometry; a handbook's figure of 8 mm over 40 mm is 11.3 degrees by {@link #RIGHT_TRIANGLE}. Taking
 * a millimetre for a degree is right at a width of 57 mm only; in a child's metaphysis of 40 to 45 mm it turns 27 to 44
 * % too far, and it is offered nowhere.
 */
public enum Wedge {
    /** Along the arc, w θ. */
    ARC {
        @Override
        double base(double width, double angle) {
            return width * angle;
        }
    },
    /** Across the opening, both faces of length w, hinge at the far cortex: 2 w sin(θ/2). The opening wedge. */
    CHORD {
        @Override
        double base(double width, double angle) {
            return 2 * width * Math.sin(angle / 2);
        }
    },
    /** One face square to the base: w tan θ. The closing wedge on a cut across the bone. */
    RIGHT_TRIANGLE {
        @Override
        double base(double width, double angle) {
            return width * Math.tan(angle);
        }
    },
    /** The width is the height of the wedge: 2 w tan(θ/2). */
    ISOSCELES {
        @Override
        double base(double width, double angle) {
            return 2 * width * Math.tan(angle / 2);
        }
    };

    abstract double base(double width, double angle);

    /**
     * The base of the wedge.
     *
     * @param width of the bone at the cut, from the hinge to the base, freed of magnification, above 0
     * @param angle of the correction, 0 to 60 degrees
     * @throws IllegalArgumentException if either is out of range
     */
    public Length base(Length width, Angle angle) {
        return new Length(base(requireWidth(width), requireAngle(angle).toRadians()));
    }

    /**
     * The correction an opening of so much brings, both faces of length w: 2 asin(h / 2w).
     *
     * @param width from the hinge to the base, above 0
     * @param opening 0 to the width
     * @throws IllegalArgumentException if either is out of range
     */
    public static Angle angleOfOpening(Length width, Length opening) {
        double w = requireWidth(width);
        if (!(opening.millimetres() >= 0 && opening.millimetres() <= w)) {
            throw new IllegalArgumentException(
                    "An opening lies between 0 and the width of the bone, not at " + opening);
        }
        return Angle.ofRadians(2 * Math.asin(opening.millimetres() / (2 * w)));
    }

    /**
     * By how much the middle of the bone grows longer by opening, or shorter by closing: (w/2) tan θ.
     *
     * @param width of the bone at the cut, above 0
     * @param angle of the correction, 0 to 60 degrees
     * @throws IllegalArgumentException if either is out of range
     */
    public static Length changeAtMiddle(Length width, Angle angle) {
        return new Length(requireWidth(width) / 2 * Math.tan(requireAngle(angle).toRadians()));
    }

    private static double requireWidth(Length width) {
        if (!(width.millimetres() > 0)) {
            throw new IllegalArgumentException("The width of a bone is above 0, not " + width.millimetres() + " mm");
        }
        return width.millimetres();
    }

    private static Angle requireAngle(Angle angle) {
        if (!(angle.degrees() >= 0 && angle.degrees() <= 60)) {
            throw new IllegalArgumentException("A wedge has 0 to 60 degrees, not " + angle.degrees());
        }
        return angle;
    }
}
