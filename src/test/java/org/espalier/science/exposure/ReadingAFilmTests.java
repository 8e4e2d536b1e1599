package org.espalier.science.exposure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.espalier.science.alignment.Landmark;
import org.espalier.science.alignment.Quantity;
import org.espalier.science.exposure.FilmConditions.Ball;
import org.espalier.science.exposure.FilmConditions.Capture;
import org.espalier.science.exposure.FilmConditions.Marker;
import org.espalier.science.exposure.FilmConditions.Ossification;
import org.espalier.science.exposure.FilmConditions.Patella;
import org.espalier.science.exposure.FilmConditions.Stance;
import org.espalier.science.exposure.FilmConditions.Technique;
import org.espalier.science.exposure.FilmConditions.View;
import org.espalier.science.quantity.Angle;
import org.espalier.science.quantity.Length;
import org.espalier.science.quantity.Side;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** The rules by which a film is read, each test named by its rule. */
class ReadingAFilmTests {

    private static final Length FEMUR = new Length(400);
    private static final Length TIBIA = new Length(360);
    private static final FilmConditions GOOD = FilmConditions.good();
    private static final Set<Quantity> LENGTHS =
            EnumSet.of(Quantity.FEMUR_LENGTH, Quantity.TIBIA_LENGTH, Quantity.LIMB_LENGTH);

    private static final Quantity[] FROM_THE_FRONT = Arrays.stream(Quantity.values())
            .filter(quantity -> quantity.family() != Landmark.Family.FROM_THE_SIDE)
            .toArray(Quantity[]::new);

    private static Effects of(FilmConditions film) {
        return Effects.of(film, FEMUR, TIBIA);
    }

    private static FilmConditions flexed(double degrees) {
        return GOOD.withFlexion(Optional.of(new Angle(degrees)));
    }

    private static FilmConditions made(Technique technique, int parts) {
        return GOOD.withCapture(new Capture(technique, parts, false, false, false));
    }

    private static void assertWithheld(Effects effects, Effect.Reason reason, Set<Quantity> quantities) {
        assertThat(quantities)
                .allSatisfy(quantity -> assertThat(effects.of(quantity)).isEqualTo(new Effect.Withheld(reason)));
    }

    private static Effect.Greyed greyed(Effects effects, Quantity quantity) {
        assertThat(effects.of(quantity)).isInstanceOf(Effect.Greyed.class);
        return (Effect.Greyed) effects.of(quantity);
    }

    private static void assertShown(Effects effects, Quantity... quantities) {
        assertThat(quantities)
                .allSatisfy(quantity -> assertThat(effects.of(quantity)).isEqualTo(new Effect.Shown()));
    }

    @Test
    void aGoodFilmShowsEverythingAndWarnsOfNothing() {
        Effects effects = of(GOOD);
        assertShown(effects, FROM_THE_FRONT);
        assertThat(effects.warnings()).isEmpty();
        assertThat(effects.comparesSides()).isTrue();
        assertThat(effects.joinsStanding()).isTrue();
    }

    @Test
    void flexionOverTenDegreesWithholdsLengthsAndLengthDifference() {
        assertWithheld(of(flexed(11)), Effect.Reason.FLEXED, LENGTHS);
        assertThat(of(flexed(11)).comparesSides()).isFalse();
        assertShown(of(flexed(10)), LENGTHS.toArray(Quantity[]::new));
        assertThat(of(flexed(10)).comparesSides()).isTrue();
    }

    /** 400 and 360 mm: 2.9, 11.5 and 25.8 mm short at 10, 20 and 30 degrees (geometry). */
    @ParameterizedTest
    @CsvSource({"20, 11.5", "30, 25.8"})
    void flexionShortensTheLimb(double flexion, double shorter) {
        Warning warning = of(flexed(flexion)).warnings().getFirst();
        assertThat(warning.kind()).isEqualTo(Warning.Kind.FLEXION_SHORTENS);
        assertThat(warning.size().orElseThrow()).isCloseTo(shorter, within(0.051));
    }

    /** 400 and 360 mm, 30 degrees of flexion, 15 of turn: 25.4 mm and 7.94 degrees (geometry). */
    @Test
    void flexionOverTenDegreesGreysHkaAndMadWithTheSizeOfTheError() {
        Effects effects = of(flexed(30).withPatella(Patella.TURNED_IN));
        assertThat(greyed(effects, Quantity.HKA).error().orElseThrow()).isCloseTo(7.94, within(0.006));
        assertThat(greyed(effects, Quantity.MAD).error().orElseThrow()).isCloseTo(25.4, within(0.051));
        assertThat(greyed(effects, Quantity.WBL))
                .isEqualTo(new Effect.Greyed(Effect.Reason.FLEXED, OptionalDouble.empty()));
    }

    @Test
    void singleBoneAnglesStayIfThatBoneIsTrueAp() {
        assertShown(of(flexed(20)), Quantity.MLDFA, Quantity.MMPTA, Quantity.LDTA, Quantity.MDA);
        Effects turned = of(flexed(20).withPatella(Patella.TURNED_OUT));
        assertThat(greyed(turned, Quantity.MLDFA).reason()).isEqualTo(Effect.Reason.TURNED);
    }

    /** A plumb axis at 15 degrees from the side, turned by 15: atan(tan 15 sin 15) = 3.97 degrees (projection). */
    @Test
    void aTurnedLimbGreysSingleBoneAnglesWithTheSizeOfTheError() {
        Effects effects = of(flexed(15).withPatella(Patella.TURNED_OUT));
        assertThat(greyed(effects, Quantity.MMPTA).error().orElseThrow()).isCloseTo(3.97, within(0.006));
    }

    @ParameterizedTest
    @EnumSource(
            value = Patella.class,
            names = {"NOT_OSSIFIED", "DISLOCATING"})
    void aPatellaThatTellsNothingLeavesTheTurnUnknown(Patella patella) {
        Effects effects = of(GOOD.withPatella(patella));
        assertThat(effects.warnsOf(Warning.Kind.TURN_UNKNOWN)).isTrue();
        assertThat(greyed(effects, Quantity.HKA).reason()).isEqualTo(Effect.Reason.TURN_UNKNOWN);
    }

    @Test
    void singleLimbFilmHasNoLengthDifferenceAndNoLeftRightComparison() {
        Effects effects = of(GOOD.withLimbs(Set.of(Side.LEFT)));
        assertThat(effects.comparesSides()).isFalse();
        assertThat(effects.warnsOf(Warning.Kind.SINGLE_LIMB)).isTrue();
        assertShown(effects, FROM_THE_FRONT);
    }

    @Test
    void singleLimbFilmTellsItsSideByFibularHeadAndLeadMarker() {
        Effects effects = of(
                GOOD.withLimbs(Set.of(Side.LEFT)).withMarker(Marker.UNREADABLE).withBall(Optional.empty()));
        assertThat(effects.warnsOf(Warning.Kind.SIDE_BY_FIBULA)).isTrue();
        assertThat(effects.warnsOf(Warning.Kind.SIDE_NOT_PROVEN)).isTrue();
        assertThat(effects.warnsOf(Warning.Kind.NO_BALL)).isTrue();
    }

    /** 3 mm on an axis of 350 mm: 0.5 degrees (geometry). */
    @Test
    void stitchedAStepOfThreeMillimetresOnAnAxisOf350IsHalfADegree() {
        Effects effects = Effects.of(made(Technique.STITCHED, 3), new Length(400), new Length(350));
        Warning step = effects.warnings().getFirst();
        assertThat(step.kind()).isEqualTo(Warning.Kind.STITCH_STEP);
        assertThat(step.size().orElseThrow()).isCloseTo(0.5, within(0.0501));
    }

    @Test
    void stitchedABallCalibratesItsOwnPart() {
        assertThat(of(made(Technique.STITCHED, 2)).warnsOf(Warning.Kind.BALL_OF_ONE_PART))
                .isTrue();
        assertThat(of(made(Technique.STITCHED, 2).withBall(Optional.empty())).warnsOf(Warning.Kind.BALL_OF_ONE_PART))
                .isFalse();
    }

    @Test
    void slotScanWithWavyCortexIsRefused() {
        assertThat(of(made(Technique.SLOT_SCAN, 1)).warnsOf(Warning.Kind.SLOT_SCAN))
                .isTrue();
        Effects wavy = of(GOOD.withCapture(new Capture(Technique.SLOT_SCAN, 1, false, true, false)));
        assertWithheld(wavy, Effect.Reason.MOVED, EnumSet.allOf(Quantity.class));
        assertThat(wavy.comparesSides()).isFalse();
    }

    @Test
    void supineIsMarkedHasNoJlcaAndIsNotJoinedToStandingPoints() {
        Effects effects = of(GOOD.withStance(Stance.SUPINE));
        assertThat(effects.warnsOf(Warning.Kind.SUPINE)).isTrue();
        assertWithheld(effects, Effect.Reason.SUPINE, EnumSet.of(Quantity.JLCA));
        assertThat(effects.joinsStanding()).isFalse();
        assertShown(effects, Quantity.MLDFA, Quantity.HKA);
        assertThat(of(GOOD.withStance(Stance.NOT_RECORDED)).joinsStanding()).isFalse();
        assertThat(of(GOOD.withStance(Stance.STANDING_HELD)).joinsStanding()).isTrue();
    }

    @Test
    void unossifiedJointSurfacesLeaveThePhysealLineAnglesAloneAndNoLpfa() {
        Effects effects = of(GOOD.withOssification(Ossification.UNOSSIFIED));
        assertWithheld(
                effects,
                Effect.Reason.UNOSSIFIED,
                EnumSet.of(Quantity.MLDFA, Quantity.MMPTA, Quantity.JLCA, Quantity.LPFA));
        assertShown(effects, Quantity.FEMUR_PHYSIS_ANGLE, Quantity.TIBIA_PHYSIS_ANGLE);
        assertThat(effects.warnsOf(Warning.Kind.PHYSEAL_LINES)).isTrue();
    }

    @Test
    void arthrogramShowsTheJointLinesOfCartilageButNoTrochanter() {
        Effects effects = of(GOOD.withOssification(Ossification.UNOSSIFIED)
                .withCapture(new Capture(Technique.ONE_SHOT, 1, true, false, false)));
        assertShown(effects, Quantity.MLDFA, Quantity.MMPTA);
        assertWithheld(effects, Effect.Reason.UNOSSIFIED, EnumSet.of(Quantity.LPFA));
        assertThat(effects.warnsOf(Warning.Kind.CONTRAST)).isTrue();
    }

    /** atan(100 tan 6 / 1000) = 0.60 and atan(100 tan 15 / 1000) = 1.53 degrees (central projection). */
    @Test
    void fluoroscopyOfOneKneeCannotStandInForALongFilm() {
        FilmConditions film = made(Technique.FLUOROSCOPY, 1);
        assertThat(greyed(of(film), Quantity.MLDFA).reason()).isEqualTo(Effect.Reason.FLUOROSCOPY);
        assertThat(greyed(of(film), Quantity.MLDFA).error().orElseThrow()).isCloseTo(0.60, within(0.0051));
        assertThat(greyed(of(film.withPatella(Patella.TURNED_IN)), Quantity.MLDFA)
                        .error()
                        .orElseThrow())
                .isCloseTo(1.53, within(0.0051));
    }

    @Test
    void aFilmFromTheSideTellsNoFrontalNumber() {
        assertWithheld(
                of(GOOD.withView(View.LATERAL)), Effect.Reason.WRONG_VIEW, EnumSet.of(Quantity.HKA, Quantity.MLDFA));
        assertShown(of(GOOD.withView(View.LATERAL)), Quantity.PDFA, Quantity.KNEE_FLEXION);
        assertWithheld(of(GOOD), Effect.Reason.WRONG_VIEW, EnumSet.of(Quantity.PDFA));
        assertThat(of(GOOD.withView(View.PA)).warnsOf(Warning.Kind.FROM_BEHIND)).isTrue();
    }

    /** 1 cm off the bone's height is 1 % at 1 m from the tube (geometry). */
    @Test
    void aBallOffTheBonesHeightIsWarnedOfWithItsPercent() {
        Effects effects = of(GOOD.withBall(Optional.of(new Ball(new Length(25), Optional.of(new Length(10))))));
        assertThat(effects.warnings()).singleElement().satisfies(warning -> {
            assertThat(warning.kind()).isEqualTo(Warning.Kind.BALL_OFF_BONE);
            assertThat(warning.size().orElseThrow()).isCloseTo(1, within(1e-9));
        });
        assertThat(of(GOOD.withBall(Optional.of(new Ball(new Length(25), Optional.empty()))))
                        .warnsOf(Warning.Kind.BALL_LEVEL_NOT_RECORDED))
                .isTrue();
    }

    @Test
    void whatIsNotRecordedIsNeverTakenForGood() {
        Effects effects = of(GOOD.withStance(Stance.NOT_RECORDED)
                .withPatella(Patella.NOT_RECORDED)
                .withFlexion(Optional.empty())
                .withMarker(Marker.NOT_RECORDED));
        assertThat(effects.joinsStanding()).isFalse();
        assertThat(effects.warnings())
                .extracting(Warning::kind)
                .containsExactly(
                        Warning.Kind.STANCE_NOT_RECORDED,
                        Warning.Kind.FLEXION_NOT_RECORDED,
                        Warning.Kind.TURN_NOT_RECORDED,
                        Warning.Kind.MARKER_NOT_RECORDED);
        assertThat(effects.warnings().get(2).size().orElseThrow()).isCloseTo(1.3, within(0.0501));
    }

    @Test
    void aStepAtASeamGreysTheWholeLimbWithTheSizeOfTheError() {
        Effects effects = Effects.of(
                GOOD.withCapture(new Capture(Technique.STITCHED, 2, false, false, true)),
                new Length(400),
                new Length(350));
        assertThat(greyed(effects, Quantity.HKA).reason()).isEqualTo(Effect.Reason.STEPPED);
        assertThat(greyed(effects, Quantity.HKA).error().orElseThrow()).isCloseTo(0.5, within(0.0501));
        assertShown(effects, Quantity.MDA);
    }

    @Test
    void refusesConditionsThatCannotBe() {
        assertThatIllegalArgumentException().isThrownBy(() -> GOOD.withLimbs(Set.of()));
        assertThatIllegalArgumentException().isThrownBy(() -> flexed(91));
        assertThatIllegalArgumentException().isThrownBy(() -> new Capture(Technique.STITCHED, 1, false, false, false));
        assertThatIllegalArgumentException().isThrownBy(() -> new Capture(Technique.ONE_SHOT, 2, false, false, false));
    }
}
