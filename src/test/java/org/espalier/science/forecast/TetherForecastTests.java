package org.espalier.science.forecast;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.espalier.science.forecast.TetheredPhysis.Film;
import org.espalier.science.quantity.Age;
import org.espalier.science.quantity.Angle;
import org.espalier.science.quantity.Sex;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class TetherForecastTests {

    private static final CentreRates PUBLISHED = CentreRates.published();
    private static final List<Film> THREE = List.of(new Film(-0.5, 9), new Film(3.5, 6.5), new Film(7, 3.6));

    private static TetheredPhysis girl(double years, Film... films) {
        return limb(Cause.IDIOPATHIC_VALGUS, years, List.of(films));
    }

    private static TetheredPhysis limb(Cause cause, double years, List<Film> films) {
        return new TetheredPhysis(
                PhysisSite.DISTAL_FEMUR,
                cause,
                Sex.FEMALE,
                years,
                OptionalDouble.empty(),
                films,
                OptionalDouble.empty());
    }

    @Test
    void isTheSameEachTime() {
        var first = TetherForecast.of(limb(Cause.RICKETS, 9, THREE), PUBLISHED);
        var second = TetherForecast.of(limb(Cause.RICKETS, 9, THREE), PUBLISHED);
        assertThat(first.film(20).quantiles(0.05, 0.5, 0.95))
                .containsExactly(second.film(20).quantiles(0.05, 0.5, 0.95));
    }

    @ParameterizedTest
    @EnumSource
    void forecastsBeforeAnyFilm(Cause cause) {
        var forecast = TetherForecast.of(limb(cause, 9, List.of()), PUBLISHED);
        double[] year = forecast.degreesLeft(12).quantiles(0.05, 0.5, 0.95);
        assertThat(year[0]).isLessThan(year[1]);
        assertThat(year[2] - year[0]).isGreaterThan(10);
        assertThat(forecast.hardwareFailed()).isZero();
        assertThat(forecast.noResponse()).isCloseTo(PUBLISHED.noResponse(cause), within(1e-6));
    }

    @Test
    void reachesToTheEndOfGrowthAndSaysWhatNeverComes() {
        var young = TetherForecast.of(girl(5, new Film(0, 8), new Film(4, 6)), PUBLISHED);
        assertThat(young.growthEnds()).isGreaterThan(120);
        var late = TetherForecast.of(girl(14, new Film(0, 8), new Film(4, 7.8)), PUBLISHED)
                .reachingTarget();
        assertThat(late.never()).isGreaterThan(0.8);
        assertThat(late.quantile(0.5)).isEmpty();
        assertThat(late.by(400)).isCloseTo(1 - late.never(), within(1e-12));
    }

    @Test
    void datesAscendAndWidenWithDoubt() {
        var reaching = TetherForecast.of(girl(10, THREE.toArray(Film[]::new)), PUBLISHED)
                .reachingTarget();
        double last = 0;
        for (double months = 7; months < 60; months += 0.5) {
            assertThat(reaching.by(months)).isGreaterThanOrEqualTo(last);
            last = reaching.by(months);
        }
        assertThat(reaching.by(6)).isZero();
    }

    @Test
    void narrowsWithEachFilm() {
        double wide = Double.POSITIVE_INFINITY;
        var films = new ArrayList<Film>();
        for (int film = 0; film < 6; film++) {
            films.add(new Film(3.5 * film, 12 - 0.8 * Math.max(0, 3.5 * film - 1)));
            Spread spread = TetherForecast.of(limb(Cause.IDIOPATHIC_VALGUS, 9, films), PUBLISHED)
                    .degreesLeft(3.5 * film + 6);
            assertThat(spread.standardDeviation()).isLessThan(wide);
            wide = spread.standardDeviation();
        }
    }

    @Test
    void doesNotLetOneOutlyingFilmTurnTheCourse() {
        var steady = TetherForecast.of(girl(10, THREE.toArray(Film[]::new)), PUBLISHED);
        var slip = TetherForecast.of(girl(10, THREE.get(0), THREE.get(1), new Film(5, 13), THREE.get(2)), PUBLISHED);
        assertThat(slip.degreesLeft(12).mean()).isCloseTo(steady.degreesLeft(12).mean(), within(0.9));
    }

    @Test
    void suspectsALimbThatStandsStill() {
        var still = TetherForecast.of(
                limb(Cause.LATE_ONSET_TIBIA_VARA, 11, List.of(new Film(0, 12), new Film(4, 12), new Film(9, 11.8))),
                PUBLISHED);
        var moving = TetherForecast.of(
                limb(Cause.LATE_ONSET_TIBIA_VARA, 11, List.of(new Film(0, 12), new Film(4, 9), new Film(9, 5))),
                PUBLISHED);
        assertThat(still.failing()).isGreaterThan(0.7);
        assertThat(moving.failing()).isLessThan(0.1);
    }

    @Test
    void knowsABreakThatWasSeen() {
        var seen = new TetheredPhysis(
                PhysisSite.DISTAL_FEMUR,
                Cause.IDIOPATHIC_VALGUS,
                Sex.FEMALE,
                10,
                OptionalDouble.of(10.5),
                THREE,
                OptionalDouble.of(7));
        assertThat(TetherForecast.of(seen, PUBLISHED).failing()).isGreaterThan(0.999);
    }

    @Test
    void learnsNothingFromNoLimbs() {
        assertThat(CentreLearning.learn(List.of())).isSameAs(PUBLISHED);
        assertThat(CentreLearning.learn(List.of(girl(10, new Film(0, 9))))).isSameAs(PUBLISHED);
    }

    @Test
    void keepsRatesAsTheyWereKept() {
        double[] values = new double[Rate.values().length];
        double[] spreads = new double[values.length];
        for (Rate rate : Rate.values()) {
            values[rate.ordinal()] = PUBLISHED.value(rate);
            spreads[rate.ordinal()] = PUBLISHED.spread(rate);
            assertThat(CentreRates.source(rate)).isNotBlank();
        }
        CentreRates kept = CentreRates.of(12, values, spreads);
        assertThat(kept.limbs()).isEqualTo(12);
        assertThat(TetherForecast.of(girl(10), kept).degreesLeft(9).mean())
                .isEqualTo(TetherForecast.of(girl(10), PUBLISHED).degreesLeft(9).mean());
        assertThatIllegalArgumentException().isThrownBy(() -> CentreRates.of(1, new double[2], new double[2]));
    }

    @Test
    void putsBothBonesTogether() {
        var forecast = TetherForecast.of(girl(10, THREE.toArray(Film[]::new)), PUBLISHED);
        var plate = new LimbForecast.Tether(Deformity.VALGUS, Angle.ofDegrees(87), forecast, 7);
        var femur = new LimbForecast.Bone(Angle.ofDegrees(83.4), 0.9, Optional.of(plate));
        var tibia = new LimbForecast.Bone(Angle.ofDegrees(88), 0.9, Optional.empty());
        var limb = new LimbForecast(femur, tibia);
        assertThat(limb.femurAngle(6).mean())
                .isCloseTo(87 - forecast.degreesLeft(13).mean(), within(1e-9));
        assertThat(limb.bonyHka(6).mean()).isCloseTo(limb.femurAngle(6).mean() - 88, within(1e-9));
        assertThat(limb.hka(6, Angle.ofDegrees(2)).mean())
                .isCloseTo(limb.bonyHka(6).mean() + 2, within(1e-9));
        assertThat(limb.withoutFemurPlate().bonyHka(24).mean())
                .isCloseTo(limb.bonyHka(0).mean(), within(1e-9));
        assertThat(limb.withoutTibiaPlate().bonyHka(6).mean())
                .isCloseTo(limb.bonyHka(6).mean(), within(1e-9));
    }

    @Test
    void reckonsDegreesLeftByBoneAndDeformity() {
        Angle target = Angle.ofDegrees(87);
        for (PhysisSite site : PhysisSite.values()) {
            for (Deformity deformity : Deformity.values()) {
                Angle joint = deformity.jointAngle(site, 5, target);
                assertThat(deformity.degreesLeft(site, joint, target)).isEqualTo(5);
            }
        }
        assertThat(Deformity.VARUS.degreesLeft(PhysisSite.DISTAL_FEMUR, Angle.ofDegrees(92), target))
                .isEqualTo(5);
        assertThat(Deformity.VARUS.degreesLeft(PhysisSite.PROXIMAL_TIBIA, Angle.ofDegrees(82), target))
                .isEqualTo(5);
    }

    @Test
    void mayReboundAfterRelease() {
        var young = AfterRelease.of(Sex.FEMALE, 7, Cause.IDIOPATHIC_VALGUS, 6, 0, 0.9);
        var grown = AfterRelease.of(Sex.FEMALE, 13, Cause.IDIOPATHIC_VALGUS, 6, 0, 0.9);
        assertThat(young.chance()).isEqualTo(0.65);
        assertThat(grown.chance()).isEqualTo(0.12);
        assertThat(AfterRelease.of(Sex.MALE, 12.5, Cause.SKELETAL_DYSPLASIA, 8, 0, 0.9)
                        .chance())
                .isCloseTo(0.65, within(1e-12));
        assertThat(young.degreesLeft(24).mean()).isCloseTo(0.65 * 4, within(1e-9));
        assertThat(young.degreesLeft(0).mean()).isZero();
        assertThat(young.degreesLeft(60).mean()).isEqualTo(young.degreesLeft(24).mean());
    }

    @Test
    void mayGoOnTetheringWhenParked() {
        var forecast = TetherForecast.of(girl(10, THREE.toArray(Film[]::new)), PUBLISHED);
        var resting = AfterRelease.of(Sex.FEMALE, 10.6, Cause.IDIOPATHIC_VALGUS, 8, 3.6, 0.9);
        var parked = new ParkedPlate(resting, forecast, 7);
        double past = parked.degreesLeft(14).below(-2);
        assertThat(past)
                .isCloseTo(
                        0.84 * resting.degreesLeft(14).below(-2)
                                + 0.16 * forecast.degreesLeft(21).below(-2),
                        within(1e-6));
    }

    @Test
    void letsAYoungBowStraightenByItself() {
        Spread three = NaturalCourse.tibiofemoral(Sex.MALE, Age.ofMonths(18), Angle.ofDegrees(-8), Age.ofYears(3))
                .orElseThrow();
        assertThat(three.mean()).isBetween(2.0, 11.0);
        assertThat(three.standardDeviation()).isBetween(3.0, 8.0);
        assertThat(NaturalCourse.tibiofemoral(Sex.MALE, Age.ofYears(2), Angle.ofDegrees(3), Age.ofYears(30)))
                .isEmpty();
    }
}
