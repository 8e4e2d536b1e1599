package org.espalier.science.alignment;

import java.util.Optional;
import org.espalier.science.quantity.Angle;

/**
 * The change between two films below which nothing measurable has changed, by its parts.
 *
 * <pre>
 * reader      = √2 · SEM95                                  reading either film again
 * positioning = 1.96 · √2 · tan p · σ_ρ                     standing turned another way, limb not quite straight seen
 *                                                           from the side
 * limit       = √(reader² + positioning²)
 * </pre>
 *
 * <p>with p the flexion or procurvatum, at least 5 degrees as no limb stands quite straight, and σ_ρ = 6 degrees of
 * turn between films (judged). Each part is rounded to 0.1 degrees as it is shown, and the limit is made of the shown
 * parts.
 *
 * <p>Source: reader part, Braun and others, J Orthop Surg Res 2023;18:69; positioning part, first-order geometry of a
 * turned limb. Established for mLDFA, mMPTA and HKA alone; physeal angles and others have no established limit.
 *
 * @param reader what reading alone may change, above 0
 * @param positioning what standing differently may change, above 0
 */
public record ChangeLimit(Angle reader, Angle positioning) {

    /** Least flexion or procurvatum reckoned with: a knee called straight. */
    public static final Angle STRAIGHT = new Angle(5);

    /** Standard deviation of a limb's turn between two films. */
    public static final Angle TURN = new Angle(6);

    private static final double TWO_SIDED_95 = 1.96;

    /** What the limit says of a change. */
    public enum Verdict {
        /** Not above the limit: within reader error and positioning. */
        NO_MEASURABLE_CHANGE,
        /** Above the limit. */
        CHANGED
    }

    /**
     * The limit for a quantity.
     *
     * @param quantity the quantity
     * @param flexion the larger flexion or procurvatum of both films, 0 to 60 degrees; {@link #STRAIGHT} when the knee
     *     is straight
     * @return empty where no limit is established
     * @throws IllegalArgumentException if the flexion is out of range
     */
    public static Optional<ChangeLimit> of(Quantity quantity, Angle flexion) {
        if (!(flexion.degrees() >= 0 && flexion.degrees() <= 60)) {
            throw new IllegalArgumentException("Flexion between 0 and 60 degrees is reckoned with, not " + flexion);
        }
        return switch (quantity) {
            case MLDFA, MMPTA, HKA ->
                Optional.of(new ChangeLimit(
                        shown(ReaderError.halfWidth95OfChange(quantity).orElseThrow()), positioning(flexion)));
            default -> Optional.empty();
        };
    }

    /** The limit, rounded to 0.1 degrees. */
    public Angle limit() {
        return shown(Math.hypot(reader.degrees(), positioning.degrees()));
    }

    /** What the limit says of the change from an earlier to a later film. */
    public Verdict of(Angle earlier, Angle later) {
        return later.minus(earlier).abs().compareTo(limit()) <= 0 ? Verdict.NO_MEASURABLE_CHANGE : Verdict.CHANGED;
    }

    private static Angle positioning(Angle flexion) {
        double side = Math.max(flexion.toRadians(), STRAIGHT.toRadians());
        return shown(TWO_SIDED_95 * Math.sqrt(2) * Math.tan(side) * TURN.degrees());
    }

    private static Angle shown(double degrees) {
        return new Angle(Math.round(degrees * 10) / 10.0);
    }
}
