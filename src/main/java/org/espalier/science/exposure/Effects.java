package org.espalier.science.exposure;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.espalier.science.alignment.ChangeLimit;
import org.espalier.science.alignment.ConeBeam;
import org.espalier.science.alignment.FlexedLimb;
import org.espalier.science.alignment.Magnification;
import org.espalier.science.alignment.PointingError;
import org.espalier.science.alignment.Quantity;
import org.espalier.science.alignment.TurnedAxis;
import org.espalier.science.exposure.FilmConditions.Patella;
import org.espalier.science.exposure.FilmConditions.Stance;
import org.espalier.science.exposure.FilmConditions.Technique;
import org.espalier.science.exposure.FilmConditions.View;
import org.espalier.science.quantity.Angle;
import org.espalier.science.quantity.Length;

/**
 * What the way a film was taken withholds, greys or warns of, with the size of the error.
 *
 * <p>Sizes follow from {@link FlexedLimb}, {@link TurnedAxis}, {@link ConeBeam} and {@link PointingError}. Judged: 10
 * degrees of flexion, {@link ChangeLimit#TURN} for a limb called forward, 15 degrees for a patella not seen forward, a
 * step of 3 mm, and a knee 100 mm off the middle of a small picture 1 m from the tube.
 *
 * @param effects what happens to each quantity, all of them
 * @param comparesSides whether right and left, and their lengths, may be compared
 * @param joinsStanding whether its points may be joined with those of standing films
 * @param warnings in the order in which they are read
 */
public record Effects(
        Map<Quantity, Effect> effects, boolean comparesSides, boolean joinsStanding, List<Warning> warnings) {

    /** Above this flexion, lengths are withheld and the whole limb's numbers greyed. */
    public static final Angle MOST_FLEXION = new Angle(10);

    /** The turn reckoned with when the patella is seen turned or tells nothing. */
    public static final Angle SEEN_TURN = new Angle(15);

    private static final Length STEP = new Length(3);
    private static final Length OFF_CENTRE = new Length(100);
    private static final Length TUBE = new Length(1000);

    /** Keeps its own copies. */
    public Effects {
        effects = Collections.unmodifiableMap(new EnumMap<>(effects));
        warnings = List.copyOf(warnings);
    }

    /**
     * The effects on one limb.
     *
     * @param film how it was taken
     * @param femur hip to knee as measured, or a typical length, above 0
     * @param tibia knee to ankle likewise
     */
    public static Effects of(FilmConditions film, Length femur, Length tibia) {
        Map<Quantity, Effect> effects = new EnumMap<>(Quantity.class);
        for (Quantity quantity : Quantity.values()) {
            effects.put(quantity, effect(quantity, film, femur, tibia));
        }
        boolean flexed = isFlexed(film);
        return new Effects(
                effects,
                film.limbs().size() == 2 && !flexed && !film.capture().wavy(),
                film.stance() == Stance.STANDING_ALONE || film.stance() == Stance.STANDING_HELD,
                warnings(film, femur, tibia));
    }

    /** What happens to a quantity. */
    public Effect of(Quantity quantity) {
        return effects.getOrDefault(quantity, new Effect.Shown());
    }

    /** Whether it warns of this. */
    public boolean warnsOf(Warning.Kind kind) {
        return warnings.stream().anyMatch(warning -> warning.kind() == kind);
    }

    private static Effect effect(Quantity quantity, FilmConditions film, Length femur, Length tibia) {
        FilmNeed need = FilmNeed.of(quantity);
        if (film.capture().wavy()) {
            return new Effect.Withheld(Effect.Reason.MOVED);
        }
        if (need.isFromTheSide() != (film.view() == View.LATERAL)) {
            return new Effect.Withheld(Effect.Reason.WRONG_VIEW);
        }
        if (film.ossification() == FilmConditions.Ossification.UNOSSIFIED
                && need.isOfOssified()
                && !(film.capture().contrast() && need.isShownByContrast())) {
            return new Effect.Withheld(Effect.Reason.UNOSSIFIED);
        }
        if (quantity == Quantity.JLCA && film.stance() == Stance.SUPINE) {
            return new Effect.Withheld(Effect.Reason.SUPINE);
        }
        if (isFlexed(film) && need.isLength()) {
            return new Effect.Withheld(Effect.Reason.FLEXED);
        }
        return doubt(need, film, femur, tibia);
    }

    private static Effect doubt(FilmNeed need, FilmConditions film, Length femur, Length tibia) {
        if (film.capture().technique() == Technique.FLUOROSCOPY && need.isAngle()) {
            Angle tilt = new ConeBeam(TUBE).tilt(OFF_CENTRE, turn(film));
            return new Effect.Greyed(
                    Effect.Reason.FLUOROSCOPY, OptionalDouble.of(tilt.abs().degrees()));
        }
        if (film.capture().stepped() && (need.isOfWholeLimb() || need == FilmNeed.KNEE_SURFACE)) {
            OptionalDouble error = need.isAngle() ? OptionalDouble.of(step(femur, tibia)) : OptionalDouble.empty();
            return new Effect.Greyed(Effect.Reason.STEPPED, error);
        }
        if (isFlexed(film) && need.isOfWholeLimb()) {
            return new Effect.Greyed(Effect.Reason.FLEXED, ofWholeLimb(need, film, femur, tibia));
        }
        if (isTurned(film) && need.isTurnedAway()) {
            Effect.Reason reason = film.patella() == Patella.TURNED_IN || film.patella() == Patella.TURNED_OUT
                    ? Effect.Reason.TURNED
                    : Effect.Reason.TURN_UNKNOWN;
            OptionalDouble error = need.isOfWholeLimb() ? ofWholeLimb(need, film, femur, tibia) : ofOneBone(need, film);
            return new Effect.Greyed(reason, error);
        }
        return new Effect.Shown();
    }

    private static OptionalDouble ofWholeLimb(FilmNeed need, FilmConditions film, Length femur, Length tibia) {
        var limb = new FlexedLimb(femur, tibia, leaning(film), turn(film));
        return switch (need) {
            case AXIS_DISTANCE -> OptionalDouble.of(limb.apparentAxisDeviation().millimetres());
            case AXIS_ANGLE -> OptionalDouble.of(limb.apparentKneeAngle().degrees());
            default -> OptionalDouble.empty();
        };
    }

    private static OptionalDouble ofOneBone(FilmNeed need, FilmConditions film) {
        return need.isAngle()
                ? OptionalDouble.of(new TurnedAxis(Angle.ZERO, leaning(film))
                        .error(turn(film))
                        .abs()
                        .degrees())
                : OptionalDouble.empty();
    }

    private static List<Warning> warnings(FilmConditions film, Length femur, Length tibia) {
        List<Warning> warnings = new ArrayList<>();
        ofStanding(film, femur, tibia, warnings);
        ofCapture(film, femur, tibia, warnings);
        ofSideAndScale(film, warnings);
        switch (film.ossification()) {
            case NOT_RECORDED -> warnings.add(Warning.of(Warning.Kind.OSSIFICATION_NOT_RECORDED));
            case UNOSSIFIED -> warnings.add(Warning.of(Warning.Kind.PHYSEAL_LINES));
            case OSSIFIED -> {}
        }
        return warnings;
    }

    private static void ofStanding(FilmConditions film, Length femur, Length tibia, List<Warning> warnings) {
        if (film.stance() == Stance.NOT_RECORDED) {
            warnings.add(Warning.of(Warning.Kind.STANCE_NOT_RECORDED));
        }
        if (film.stance() == Stance.SUPINE) {
            warnings.add(Warning.of(Warning.Kind.SUPINE));
        }
        if (film.flexion().isEmpty()) {
            warnings.add(Warning.of(Warning.Kind.FLEXION_NOT_RECORDED));
        }
        if (isFlexed(film)) {
            double projected = new FlexedLimb(femur, tibia, leaning(film), Angle.ZERO)
                    .projectedLength()
                    .millimetres();
            warnings.add(
                    Warning.of(Warning.Kind.FLEXION_SHORTENS, femur.millimetres() + tibia.millimetres() - projected));
        }
        switch (film.patella()) {
            case NOT_OSSIFIED, DISLOCATING -> warnings.add(Warning.of(Warning.Kind.TURN_UNKNOWN));
            case NOT_RECORDED ->
                warnings.add(Warning.of(
                        Warning.Kind.TURN_NOT_RECORDED,
                        new TurnedAxis(Angle.ZERO, leaning(film))
                                .error(SEEN_TURN)
                                .abs()
                                .degrees()));
            case FORWARD, TURNED_IN, TURNED_OUT -> {}
        }
    }

    private static void ofCapture(FilmConditions film, Length femur, Length tibia, List<Warning> warnings) {
        if (film.view() == View.NOT_RECORDED) {
            warnings.add(Warning.of(Warning.Kind.VIEW_NOT_RECORDED));
        }
        if (film.capture().technique() == Technique.NOT_RECORDED) {
            warnings.add(Warning.of(Warning.Kind.TECHNIQUE_NOT_RECORDED));
        }
        if (film.view() == View.PA) {
            warnings.add(Warning.of(Warning.Kind.FROM_BEHIND));
        }
        if (film.capture().technique() == Technique.STITCHED) {
            warnings.add(Warning.of(Warning.Kind.STITCH_STEP, step(femur, tibia)));
            if (film.ball().isPresent()) {
                warnings.add(Warning.of(Warning.Kind.BALL_OF_ONE_PART));
            }
        }
        if (film.capture().technique() == Technique.SLOT_SCAN) {
            warnings.add(Warning.of(Warning.Kind.SLOT_SCAN));
        }
        if (film.capture().contrast()) {
            warnings.add(Warning.of(Warning.Kind.CONTRAST));
        }
    }

    private static void ofSideAndScale(FilmConditions film, List<Warning> warnings) {
        if (film.limbs().size() == 1) {
            warnings.add(Warning.of(Warning.Kind.SINGLE_LIMB));
            warnings.add(Warning.of(Warning.Kind.SIDE_BY_FIBULA));
            if (film.ball().isEmpty()) {
                warnings.add(Warning.of(Warning.Kind.NO_BALL));
            }
        }
        switch (film.marker()) {
            case NOT_RECORDED -> warnings.add(Warning.of(Warning.Kind.MARKER_NOT_RECORDED));
            case UNREADABLE, ABSENT -> warnings.add(Warning.of(Warning.Kind.SIDE_NOT_PROVEN));
            case READABLE -> {}
        }
        film.ball().ifPresent(ball -> ball.offset()
                .ifPresentOrElse(
                        offset -> ofBallOffBone(offset, warnings),
                        () -> warnings.add(Warning.of(Warning.Kind.BALL_LEVEL_NOT_RECORDED))));
    }

    private static void ofBallOffBone(Length offset, List<Warning> warnings) {
        if (offset.millimetres() != 0) {
            warnings.add(Warning.of(
                    Warning.Kind.BALL_OFF_BONE, 100 * Magnification.excessOfMarkerOffBone(TUBE.plus(offset), TUBE)));
        }
    }

    private static boolean isFlexed(FilmConditions film) {
        return film.flexion()
                .filter(flexion -> flexion.compareTo(MOST_FLEXION) > 0)
                .isPresent();
    }

    /** What a step between the ends of the shorter bone does to its axis, in degrees. */
    private static double step(Length femur, Length tibia) {
        return PointingError.ofEnd(STEP, femur.compareTo(tibia) < 0 ? femur : tibia)
                .degrees();
    }

    private static boolean isTurned(FilmConditions film) {
        return switch (film.patella()) {
            case TURNED_IN, TURNED_OUT, NOT_OSSIFIED, DISLOCATING -> true;
            case FORWARD, NOT_RECORDED -> false;
        };
    }

    private static Angle turn(FilmConditions film) {
        return film.patella() == Patella.FORWARD ? ChangeLimit.TURN : SEEN_TURN;
    }

    /** No limb stands quite straight. */
    private static Angle leaning(FilmConditions film) {
        Angle flexion = film.flexion().orElse(Angle.ZERO);
        return flexion.compareTo(ChangeLimit.STRAIGHT) > 0 ? flexion : ChangeLimit.STRAIGHT;
    }
}
