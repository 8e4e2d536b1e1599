package org.espalier.reading;

import static java.util.Objects.requireNonNullElse;

import java.util.List;
import java.util.Optional;
import org.espalier.science.exposure.FilmConditions;
import org.espalier.science.exposure.FilmConditions.Ball;
import org.espalier.science.exposure.FilmConditions.Capture;
import org.espalier.science.exposure.FilmConditions.Lift;
import org.espalier.science.exposure.FilmConditions.Marker;
import org.espalier.science.exposure.FilmConditions.Ossification;
import org.espalier.science.exposure.FilmConditions.Patella;
import org.espalier.science.exposure.FilmConditions.Stance;
import org.espalier.science.exposure.FilmConditions.Technique;
import org.espalier.science.exposure.FilmConditions.View;
import org.espalier.science.quantity.Angle;
import org.espalier.science.quantity.Length;
import org.espalier.science.quantity.Side;
import org.jspecify.annotations.Nullable;

/**
 * How a film was taken, as its reader records it. Whatever is left out is not recorded, and what is not recorded is
 * never taken for good.
 *
 * @param parts how many parts a stitched film was joined from, 2 to 9
 * @param step whether a step is seen at a seam
 * @param wavyCortex whether a cortex runs in waves on a slot scan
 * @param liftMm height of the lift under one foot, 1 to 200 mm
 * @param flexionRight degrees, 0 to 90
 * @param ballMm true diameter of a ball on the film, 5 to 100 mm
 * @param ballOffMm how much nearer to the detector than the bone the ball lies, −300 to 300 mm
 */
public record FilmTaken(
        Stance stance,
        View view,
        Technique technique,
        @Nullable Integer parts,
        Seen step,
        Seen contrast,
        Seen wavyCortex,
        LimbsShown limbsShown,
        @Nullable Double liftMm,
        @Nullable Side liftSide,
        Patella patellaRight,
        Patella patellaLeft,
        @Nullable Integer flexionRight,
        @Nullable Integer flexionLeft,
        @Nullable Double ballMm,
        @Nullable Double ballOffMm,
        Marker marker,
        Ossification ossification) {

    /**
     * @throws IllegalArgumentException for a number out of its range
     */
    public FilmTaken {
        stance = requireNonNullElse(stance, Stance.NOT_RECORDED);
        view = requireNonNullElse(view, View.NOT_RECORDED);
        technique = requireNonNullElse(technique, Technique.NOT_RECORDED);
        step = requireNonNullElse(step, Seen.NOT_RECORDED);
        contrast = requireNonNullElse(contrast, Seen.NOT_RECORDED);
        wavyCortex = requireNonNullElse(wavyCortex, Seen.NOT_RECORDED);
        limbsShown = requireNonNullElse(limbsShown, LimbsShown.NOT_RECORDED);
        patellaRight = requireNonNullElse(patellaRight, Patella.NOT_RECORDED);
        patellaLeft = requireNonNullElse(patellaLeft, Patella.NOT_RECORDED);
        marker = requireNonNullElse(marker, Marker.NOT_RECORDED);
        ossification = requireNonNullElse(ossification, Ossification.NOT_RECORDED);
        requireWithin("A film is joined from 2 to 9 parts", parts, 2, 9);
        requireWithin("A lift measures 1 to 200 mm", liftMm, 1, 200);
        requireWithin("A knee on a film is flexed 0 to 90 degrees", flexionRight, 0, 90);
        requireWithin("A knee on a film is flexed 0 to 90 degrees", flexionLeft, 0, 90);
        requireWithin("A calibration ball measures 5 to 100 mm", ballMm, 5, 100);
        requireWithin("A ball lies within 300 mm of the bone's height", ballOffMm, -300, 300);
    }

    /** Nothing recorded. */
    public static FilmTaken notRecorded() {
        return new FilmTaken(
                Stance.NOT_RECORDED,
                View.NOT_RECORDED,
                Technique.NOT_RECORDED,
                null,
                Seen.NOT_RECORDED,
                Seen.NOT_RECORDED,
                Seen.NOT_RECORDED,
                LimbsShown.NOT_RECORDED,
                null,
                null,
                Patella.NOT_RECORDED,
                Patella.NOT_RECORDED,
                null,
                null,
                null,
                null,
                Marker.NOT_RECORDED,
                Ossification.NOT_RECORDED);
    }

    /** With a ball of this true diameter. */
    public FilmTaken withBall(double millimetres) {
        return new FilmTaken(
                stance,
                view,
                technique,
                parts,
                step,
                contrast,
                wavyCortex,
                limbsShown,
                liftMm,
                liftSide,
                patellaRight,
                patellaLeft,
                flexionRight,
                flexionLeft,
                millimetres,
                ballOffMm,
                marker,
                ossification);
    }

    public Patella patella(Side side) {
        return side == Side.RIGHT ? patellaRight : patellaLeft;
    }

    /** The flexion of the knee in degrees; empty when it was not recorded. */
    public Optional<Integer> flexion(Side side) {
        return Optional.ofNullable(side == Side.RIGHT ? flexionRight : flexionLeft);
    }

    public Optional<Length> ballDiameter() {
        return Optional.ofNullable(ballMm).map(Length::ofMillimetres);
    }

    /** Whether the child lay: its points are not joined to those of standing films. */
    public boolean lay() {
        return stance == Stance.SUPINE;
    }

    /** Whether the film was taken from the side. */
    public boolean fromTheSide() {
        return view == View.LATERAL;
    }

    /** What it means for one limb. */
    FilmConditions conditions(Side side, List<Side> read) {
        return new FilmConditions(
                stance,
                view,
                capture(),
                limbsShown.sides(read),
                lift(),
                patella(side),
                flexion(side).map(degrees -> Angle.ofDegrees(degrees)),
                ballDiameter()
                        .map(diameter -> new Ball(
                                diameter, Optional.ofNullable(ballOffMm).map(Length::ofMillimetres))),
                marker,
                ossification);
    }

    /** A stitched film has two parts at least, however many were counted. */
    private Capture capture() {
        boolean stitched = technique == Technique.STITCHED;
        int shots = stitched ? requireNonNullElse(parts, 2) : 1;
        return new Capture(
                technique,
                shots,
                contrast == Seen.YES,
                technique == Technique.SLOT_SCAN && wavyCortex == Seen.YES,
                stitched && step == Seen.YES);
    }

    private Optional<Lift> lift() {
        return liftMm == null || liftSide == null
                ? Optional.empty()
                : Optional.of(new Lift(Length.ofMillimetres(liftMm), liftSide));
    }

    private static void requireWithin(String rule, @Nullable Number value, double least, double most) {
        if (value != null && !(value.doubleValue() >= least && value.doubleValue() <= most)) {
            throw new IllegalArgumentException(rule + ", not " + value);
        }
    }
}
