package org.espalier.science.alignment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Collections;
import java.util.List;
import org.espalier.science.quantity.Angle;
import org.espalier.science.statistics.PairedReadings;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SiteRepeatabilityTests {

    private static List<PairedReadings> twoDegreesApart(int pairs) {
        return Collections.nCopies(pairs, new PairedReadings(89, 87));
    }

    private static SiteRepeatability of(Quantity quantity, int pairs) {
        return SiteRepeatability.of(quantity, twoDegreesApart(pairs)).orElseThrow();
    }

    /** Standard errors from SEM95 of Braun and others, J Orthop Surg Res 2023;18:69, divided by 1.96. */
    @ParameterizedTest
    @CsvSource({"HKA, 0.709, 1.39", "MAD, 1.689, 3.31", "MLDFA, 0.541, 1.06", "MMPTA, 0.658, 1.29"})
    void standsOnThePublishedFigureBeforeTheFirstDoubleReading(Quantity quantity, double error, double halfWidth) {
        SiteRepeatability prior = SiteRepeatability.of(quantity, List.of()).orElseThrow();
        assertThat(prior.basis()).isEqualTo(SiteRepeatability.Basis.PUBLISHED);
        assertThat(prior.standardError()).isCloseTo(error, within(0.0005001));
        assertThat(prior.halfWidth95()).isCloseTo(halfWidth, within(1e-9));
    }

    /** Reader part of a change in the same paper times √2: 2.0, 1.5 and 1.8 degrees, 4.7, 6.4 and 4.4 mm. */
    @ParameterizedTest
    @CsvSource({"HKA, 2.0", "MLDFA, 1.5", "MMPTA, 1.8", "MAD, 4.7", "FEMUR_LENGTH, 6.4", "TIBIA_LENGTH, 4.4"})
    void knowsTheSmallestChange(Quantity quantity, double change) {
        assertThat(SiteRepeatability.of(quantity, List.of()).orElseThrow().smallestChange95())
                .isCloseTo(change, within(0.051));
    }

    @Test
    void goesOverToTheSitesOwnFigureByThirty() {
        double published = 1.06 / 1.96;
        double own = Math.sqrt(2);
        assertThat(of(Quantity.MLDFA, 15).basis()).isEqualTo(SiteRepeatability.Basis.BOTH);
        assertThat(of(Quantity.MLDFA, 15).standardError())
                .isCloseTo(Math.sqrt((own * own + published * published) / 2), within(1e-9));
        assertThat(of(Quantity.MLDFA, 29).standardError()).isBetween(1.37, own);
        assertThat(of(Quantity.MLDFA, 30).basis()).isEqualTo(SiteRepeatability.Basis.OWN);
        assertThat(of(Quantity.MLDFA, 30).standardError()).isCloseTo(own, within(1e-9));
    }

    @Test
    void hasNoFigureWithoutPublicationBeforeThirty() {
        assertThat(SiteRepeatability.of(Quantity.JLCA, twoDegreesApart(29))).isEmpty();
        assertThat(of(Quantity.JLCA, 30).basis()).isEqualTo(SiteRepeatability.Basis.OWN);
    }

    private static ScrewLag lag(double joint, double screws) {
        return ScrewLag.between(
                Quantity.MLDFA, new Angle(80), new Angle(80 + joint), new Angle(10), new Angle(10 + screws));
    }

    @Test
    void pointsOutALagOfScrewAngleBehindJointAngleOnlyPastTwoStandardDeviationsAndAfterTheFreePlay() {
        Angle play = new Angle(3);
        assertThat(lag(8, 4.6).limit().degrees()).isBetween(3.4, 4.0);
        assertThat(lag(8, 4.6).verdict(play)).isEqualTo(ScrewLag.Verdict.WITHIN_ERROR);
        assertThat(lag(8, 4).verdict(play)).isEqualTo(ScrewLag.Verdict.BEHIND);
        assertThat(lag(-8, 4).verdict(play)).isEqualTo(ScrewLag.Verdict.BEHIND);
        assertThat(lag(8, 0).verdict(play)).isEqualTo(ScrewLag.Verdict.BEHIND);
        assertThat(lag(8, 0).verdict(new Angle(8))).isEqualTo(ScrewLag.Verdict.WITHIN_FREE_PLAY);
        assertThat(lag(8, 4).verdict(Angle.ZERO)).isEqualTo(ScrewLag.Verdict.BEHIND);
        assertThat(lag(4, 8).verdict(play)).isEqualTo(ScrewLag.Verdict.WITHIN_ERROR);
        assertThat(lag(4, 8).lag()).isEqualTo(new Angle(-4));
    }

    @Test
    void followsAKneeAngleOnly() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> ScrewLag.between(Quantity.HKA, Angle.ZERO, Angle.ZERO, Angle.ZERO, Angle.ZERO));
    }
}
