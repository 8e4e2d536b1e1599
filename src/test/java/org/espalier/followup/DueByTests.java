package org.espalier.followup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import org.espalier.patient.Bone;
import org.espalier.patient.BoneEnd;
import org.espalier.prognosis.Past;
import org.espalier.science.forecast.Deformity;
import org.espalier.science.quantity.Side;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class DueByTests {

    private static final LocalDate SEEN = LocalDate.of(2026, 3, 2);
    private static final double DAYS_OF_A_MONTH = 30.4375;
    private static final GrowthPlate FEMUR = new GrowthPlate(Side.RIGHT, Bone.FEMUR, BoneEnd.DISTAL);
    private static final GrowthPlate TIBIA = new GrowthPlate(Side.LEFT, Bone.TIBIA, BoneEnd.PROXIMAL);

    /** Degrees left at the last look, moving at a rate known by its mean and spread, read with an error. */
    private record Straight(double left, double rate, double rateSpread, double error) implements Outlook {

        private NormalDistribution beyond(LocalDate day) {
            double months = ChronoUnit.DAYS.between(SEEN, day) / DAYS_OF_A_MONTH;
            return new NormalDistribution(rate * months - left, Math.hypot(rateSpread * months, error) + 1e-12);
        }

        @Override
        public double chancePast(LocalDate day, double degrees) {
            return 1 - beyond(day).cumulativeProbability(degrees);
        }

        @Override
        public Past past(LocalDate day) {
            var beyond = beyond(day);
            return new Past(
                    Deformity.VALGUS,
                    Math.max(0, beyond.getMean()),
                    Math.max(0, beyond.inverseCumulativeProbability(0.05)),
                    Math.max(0, beyond.inverseCumulativeProbability(0.95)));
        }

        @Override
        public double change(LocalDate from, LocalDate to) {
            return rate * ChronoUnit.DAYS.between(from, to) / DAYS_OF_A_MONTH;
        }

        @Override
        public Optional<LocalDate> arrival() {
            return rate > 0 ? Optional.of(SEEN.plusDays(Math.round(left / rate * DAYS_OF_A_MONTH))) : Optional.empty();
        }
    }

    /**
     * The figures of the clinical rules: 6° left at 0.85 ± 0.35° a month are looked at by 3.8 months when theatre
     * follows within a month, by 1.8 when it takes three. The reader's error is that of HKA with a straight knee:
     * changes under 2.5° are not measurable, hence 2.5 / (1.96 √2) = 0.9° on one film.
     */
    @ParameterizedTest
    @CsvSource({"1, 3.8", "3, 1.8"})
    void looksByTheFiguresOfTheClinicalRules(double waitMonths, double months) {
        var due = DueBy.of(care(waitMonths, tethered(new Straight(6, 0.85, 0.35, 0.9))), Limits.DEFAULTS);

        assertThat(due.rule()).isEqualTo(DueRule.PAST_TARGET);
        assertThat(ChronoUnit.DAYS.between(SEEN, due.lookBy()) / DAYS_OF_A_MONTH)
                .as("months, to the rounding of the published figure")
                .isCloseTo(months, within(0.06));
        assertThat(due.plate()).contains(FEMUR);
    }

    @Test
    void saysWhatAMonthOfWaitingRisks() {
        var due = DueBy.of(care(1, tethered(new Straight(6, 0.85, 0.35, 0.9))), Limits.DEFAULTS);

        assertThat(due.risk()).isInstanceOfSatisfying(Risk.PastTarget.class, risk -> {
            assertThat(risk.inTime()).isBetween(0.015, 0.02);
            assertThat(risk.monthLater()).isGreaterThan(2 * risk.inTime());
        });
        assertThat(due.listBy())
                .as("a month before the target is as likely reached as not")
                .contains(SEEN.plusDays(Math.round(6 / 0.85 * DAYS_OF_A_MONTH)).minusDays(30));
    }

    @Test
    void looksAtOnceWhenTheTargetIsNear() {
        var due = DueBy.of(care(1, tethered(new Straight(0.5, 1.2, 0.5, 0.9))), Limits.DEFAULTS);

        assertThat(due.lookBy()).isEqualTo(SEEN);
        assertThat(due.film()).isTrue();
    }

    @Test
    void neverLeavesAPlateLongerThanTheLongestInterval() {
        var slow = new Straight(20, 0.3, 0.05, 0.9);

        assertThat(DueBy.of(care(1, tethered(slow)), Limits.DEFAULTS))
                .extracting(Due::lookBy, Due::rule)
                .containsExactly(SEEN.plusMonths(6), DueRule.PLATE_LONGEST);
        assertThat(DueBy.of(diseased(tethered(slow)), Limits.DEFAULTS))
                .extracting(Due::lookBy, Due::rule)
                .containsExactly(SEEN.plusMonths(4), DueRule.PLATE_LONGEST_YOUNG);
    }

    @Test
    void takesNoFilmThatCouldShowNothing() {
        var dysplasia = new Straight(20, 0.3, 0.05, 0.9);

        assertThat(DueBy.of(diseased(tethered(dysplasia)), Limits.DEFAULTS).film())
                .as("1.2° in four months cannot be told from reader error")
                .isFalse();
        assertThat(DueBy.of(care(1, tethered(new Straight(20, 0.8, 0.1, 0.9))), Limits.DEFAULTS)
                        .film())
                .isTrue();
    }

    @Test
    void takesAFilmWhenAScrewIsInDoubt() {
        var doubtful = plate(
                Following.TETHERED,
                SEEN.minusYears(1),
                Optional.of(SEEN),
                true,
                Optional.of(new Straight(20, 0.3, 0.05, 0.9)));

        assertThat(DueBy.of(diseased(doubtful), Limits.DEFAULTS).film()).isTrue();
    }

    @Test
    void looksAfterAPlateAtWoundThenMotionThenFilm() {
        var placed = SEEN.minusDays(3);
        var plate = plate(Following.TETHERED, placed, Optional.of(placed.minusDays(20)), false, Optional.empty());

        assertThat(DueBy.of(seen(placed, plate), Limits.DEFAULTS))
                .extracting(Due::lookBy, Due::rule, Due::film)
                .containsExactly(placed.plusDays(14), DueRule.WOUND, false);
        assertThat(DueBy.of(seen(placed.plusDays(12), plate), Limits.DEFAULTS))
                .extracting(Due::lookBy, Due::rule, Due::film)
                .containsExactly(placed.plusDays(42), DueRule.MOTION, false);
        assertThat(DueBy.of(seen(placed.plusDays(41), plate), Limits.DEFAULTS))
                .extracting(Due::lookBy, Due::rule, Due::film)
                .containsExactly(placed.plusMonths(3), DueRule.FIRST_FILM, true);
    }

    @Test
    void seesAWatchedLegByItsAge() {
        var watched = PlateFacts.watched(FEMUR, SEEN.minusYears(1));

        assertThat(DueBy.of(born(SEEN.minusYears(2), watched), Limits.DEFAULTS))
                .extracting(Due::lookBy, Due::rule)
                .containsExactly(SEEN.plusMonths(6), DueRule.WATCHED_YOUNG);
        assertThat(DueBy.of(born(SEEN.minusYears(9), watched), Limits.DEFAULTS))
                .extracting(Due::lookBy, Due::rule)
                .containsExactly(SEEN.plusMonths(12), DueRule.WATCHED_OLDER);
    }

    @Test
    void decidesEarlyTibiaVaraBeforeTheFourthBirthday() {
        var birth = SEEN.minusYears(4).plusMonths(2);
        var care = new CareFacts(
                SEEN,
                birth,
                SEEN.minusYears(1),
                Optional.of(SEEN),
                false,
                true,
                List.of(PlateFacts.watched(TIBIA, SEEN.minusYears(1))),
                Optional.empty(),
                1);

        var due = DueBy.of(care, Limits.DEFAULTS);

        assertThat(due.rule()).isEqualTo(DueRule.FOURTH_BIRTHDAY);
        assertThat(due.lookBy()).isEqualTo(birth.plusYears(4).minusDays(30));
        assertThat(due.decideBy()).contains(due.lookBy());
        assertThat(due.risk()).isEqualTo(new Risk.WindowCloses());
    }

    /** A plate begun at three years and three months is judged while an osteotomy can still be done before four. */
    @ParameterizedTest
    @EnumSource(
            value = Following.class,
            names = {"TETHERED", "PARKED"})
    void looksBeforeTheFourthBirthdayWhetherAPlateWorks(Following held) {
        var birth = SEEN.minusYears(4).plusMonths(3);
        var plate = plate(held, SEEN.minusMonths(5), Optional.of(SEEN), false, Optional.empty());

        assertThat(DueBy.of(infantile(birth, SEEN, plate), Limits.DEFAULTS))
                .extracting(Due::rule, Due::lookBy, Due::film)
                .containsExactly(DueRule.FOURTH_BIRTHDAY, birth.plusYears(4).minusDays(30), true);
        var late = birth.plusYears(4).minusDays(20);
        assertThat(DueBy.of(infantile(birth, late, plate), Limits.DEFAULTS).rule())
                .as("once theatre would come after it, another look gains nothing")
                .isNotEqualTo(DueRule.FOURTH_BIRTHDAY);
    }

    private static CareFacts infantile(LocalDate birth, LocalDate seen, PlateFacts plate) {
        return new CareFacts(
                seen, birth, SEEN.minusYears(1), Optional.of(seen), false, true, List.of(plate), Optional.empty(), 1);
    }

    /** What a plate does too little of can be made up for only while the window is open. */
    @Test
    void looksAtAPlateBeforeItsWindowCloses() {
        var slow = new Straight(10, 0.3, 0.05, 0.9);
        var closing = closing(SEEN.plusMonths(4), slow);

        var due = DueBy.of(care(1, closing), Limits.DEFAULTS);

        assertThat(due.rule()).isEqualTo(DueRule.WINDOW);
        assertThat(due.lookBy()).isEqualTo(SEEN.plusMonths(4).minusDays(30));
        assertThat(due.decideBy()).contains(due.lookBy());
        assertThat(due.film()).isTrue();
        assertThat(due.risk()).isEqualTo(new Risk.WindowCloses());
        assertThat(DueBy.of(care(1, closing(SEEN.plusDays(20), slow)), Limits.DEFAULTS)
                        .rule())
                .as("theatre would come too late: no reason to look again at once")
                .isEqualTo(DueRule.PLATE_LONGEST);
    }

    private static PlateFacts closing(LocalDate window, Outlook outlook) {
        return new PlateFacts(
                FEMUR,
                Following.TETHERED,
                false,
                SEEN.minusYears(1),
                Optional.of(SEEN),
                Optional.of(window),
                Optional.empty(),
                false,
                Optional.of(outlook),
                Optional.empty());
    }

    @Test
    void looksAtACutBoneWhileItsCastCanBeWedgedThenAsItHealsAndAtAFrameEachFortnight() {
        var cut = SEEN.minusDays(2);

        assertThat(DueBy.of(seen(cut, healing(cut, false)), Limits.DEFAULTS))
                .extracting(Due::rule, Due::lookBy, Due::film)
                .containsExactly(DueRule.HEALING, cut.plusDays(14), true);
        assertThat(DueBy.of(seen(cut.plusDays(3), healing(cut, false)), Limits.DEFAULTS)
                        .lookBy())
                .as("a look at the wound on the third day is not the film")
                .isEqualTo(cut.plusDays(14));
        assertThat(DueBy.of(seen(cut.plusDays(13), healing(cut, false)), Limits.DEFAULTS)
                        .lookBy())
                .isEqualTo(cut.plusDays(13 + 42));
        assertThat(DueBy.of(seen(cut.plusDays(60), healing(cut, true)), Limits.DEFAULTS)
                        .lookBy())
                .isEqualTo(cut.plusDays(60 + 14));
    }

    private static PlateFacts healing(LocalDate since, boolean inFrame) {
        return new PlateFacts(
                TIBIA,
                Following.WATCHED,
                false,
                SEEN.minusYears(2),
                Optional.of(SEEN),
                Optional.empty(),
                Optional.empty(),
                false,
                Optional.empty(),
                Optional.of(new PlateFacts.Healing(since, inFrame)));
    }

    @Test
    void coversAllGrowthPlatesAtTheEarliestDay() {
        var planned = new PlateFacts(
                TIBIA,
                Following.PLANNED,
                false,
                SEEN,
                Optional.of(SEEN),
                Optional.of(SEEN.plusMonths(2)),
                Optional.empty(),
                false,
                Optional.empty(),
                Optional.empty());

        var due = DueBy.of(care(1, PlateFacts.watched(FEMUR, SEEN), planned), Limits.DEFAULTS);

        assertThat(due.rule()).isEqualTo(DueRule.WINDOW);
        assertThat(due.plate()).contains(TIBIA);
        assertThat(due.lookBy()).isEqualTo(SEEN.plusMonths(2).minusDays(30));
    }

    @Test
    void seesTheReleasedMoreSeldomAfterTwoYears() {
        var fresh = plate(Following.RELEASED, SEEN.minusMonths(5), Optional.of(SEEN), false, Optional.empty());
        var old = plate(Following.RELEASED, SEEN.minusYears(3), Optional.of(SEEN), false, Optional.empty());

        assertThat(DueBy.of(care(1, fresh), Limits.DEFAULTS).lookBy()).isEqualTo(SEEN.plusMonths(6));
        assertThat(DueBy.of(care(1, old), Limits.DEFAULTS).lookBy()).isEqualTo(SEEN.plusMonths(12));
    }

    @Test
    void heedsWhatSomebodyAskedForWhenItIsEarlier() {
        var watched = PlateFacts.watched(FEMUR, SEEN.minusYears(1));
        var asked = new CareFacts(
                SEEN,
                SEEN.minusYears(9),
                SEEN.minusYears(1),
                Optional.of(SEEN),
                false,
                false,
                List.of(watched),
                Optional.of(SEEN.plusDays(20)),
                1);

        assertThat(DueBy.of(asked, Limits.DEFAULTS))
                .extracting(Due::lookBy, Due::rule)
                .containsExactly(SEEN.plusDays(20), DueRule.ASKED);
    }

    @Test
    void ranksTheUnknownAboveEveryNumber() {
        var unknown = plate(Following.TETHERED, SEEN.minusMonths(5), Optional.empty(), false, Optional.empty());
        var screw = plate(Following.TETHERED, SEEN.minusYears(1), Optional.of(SEEN), true, Optional.empty());
        var past = tethered(new Straight(0, 1, 0.2, 0.9));
        var window = new PlateFacts(
                FEMUR,
                Following.WATCHED,
                false,
                SEEN,
                Optional.of(SEEN),
                Optional.of(SEEN.plusMonths(3)),
                Optional.empty(),
                false,
                Optional.empty(),
                Optional.empty());
        var late = PlateFacts.watched(FEMUR, SEEN);

        assertThat(List.of(harm(unknown), harm(screw), harm(window), harm(past), harm(late)))
                .isSortedAccordingTo((one, other) -> Double.compare(other.degrees(), one.degrees()))
                .extracting(Harm::kind)
                .containsExactly(
                        Harm.Kind.UNKNOWN_SINCE_PLATE,
                        Harm.Kind.SCREW,
                        Harm.Kind.WINDOW,
                        Harm.Kind.PAST_TARGET,
                        Harm.Kind.OVERDUE);
    }

    @Test
    void looksAtWhatIsClosedUntilCareIsEnded() {
        var mature = plate(Following.MATURE, SEEN.minusDays(1), Optional.of(SEEN), false, Optional.empty());

        assertThat(DueBy.of(care(1, mature), Limits.DEFAULTS))
                .extracting(Due::lookBy, Due::rule, Due::film)
                .containsExactly(SEEN.plusMonths(12), DueRule.CLOSED, false);
    }

    @Test
    void refusesToSayWhenNothingIsFollowed() {
        assertThatThrownBy(() -> DueBy.of(care(1), Limits.DEFAULTS)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void refusesLimitsThatNobodyCouldMean() {
        assertThatThrownBy(() -> new Limits(28, 6, 12, 3, 3, 14, 42, 3, 9, 4, 2, 2, 1, 6, 12, 14, 2))
                .hasMessageContaining("9");
    }

    private static Harm harm(PlateFacts plate) {
        return HarmOfWaiting.of(care(1, plate), Limits.DEFAULTS);
    }

    private static PlateFacts tethered(Outlook outlook) {
        return plate(Following.TETHERED, SEEN.minusYears(1), Optional.of(SEEN), false, Optional.of(outlook));
    }

    private static PlateFacts plate(
            Following following,
            LocalDate since,
            Optional<LocalDate> lastFilm,
            boolean screwBroken,
            Optional<Outlook> outlook) {
        return new PlateFacts(
                FEMUR,
                following,
                false,
                since,
                lastFilm,
                Optional.empty(),
                Optional.empty(),
                screwBroken,
                outlook,
                Optional.empty());
    }

    private static CareFacts care(double waitMonths, PlateFacts... plates) {
        return facts(SEEN.minusYears(9), SEEN, false, waitMonths, plates);
    }

    private static CareFacts diseased(PlateFacts... plates) {
        return facts(SEEN.minusYears(9), SEEN, true, 1, plates);
    }

    private static CareFacts seen(LocalDate seen, PlateFacts... plates) {
        return facts(SEEN.minusYears(9), seen, false, 1, plates);
    }

    private static CareFacts born(LocalDate birth, PlateFacts... plates) {
        return facts(birth, SEEN, false, 1, plates);
    }

    private static CareFacts facts(
            LocalDate birth, LocalDate seen, boolean diseased, double waitMonths, PlateFacts... plates) {
        return new CareFacts(
                seen,
                birth,
                SEEN.minusYears(2),
                Optional.of(seen),
                diseased,
                false,
                List.of(plates),
                Optional.empty(),
                waitMonths);
    }
}
