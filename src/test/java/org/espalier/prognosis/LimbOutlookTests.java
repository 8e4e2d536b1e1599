package org.espalier.prognosis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.espalier.science.forecast.Cause;
import org.espalier.science.forecast.CentreRates;
import org.espalier.science.forecast.Deformity;
import org.espalier.science.forecast.LimbForecast;
import org.espalier.science.forecast.PhysisSite;
import org.espalier.science.forecast.TetherForecast;
import org.espalier.science.forecast.TetheredPhysis;
import org.espalier.science.forecast.TetheredPhysis.Film;
import org.espalier.science.quantity.Angle;
import org.espalier.science.quantity.Sex;
import org.espalier.science.quantity.Side;
import org.junit.jupiter.api.Test;

class LimbOutlookTests {

    private static final LocalDate TODAY = LocalDate.of(2026, 3, 2);

    @Test
    void isOnItsWayWhileThePlateLeadsItToStraight() {
        var limb = valgusFemurBeside(88);
        assertThat(limb.bonyHka(TODAY).middle().degrees()).isNegative();
        assertThat(limb.isBonyLedAway()).isFalse();
        var straight = limb.bonyStraight().orElseThrow();
        assertThat(straight.earliest()).isBefore(straight.day());
        assertThat(straight.latest()).hasValueSatisfying(day -> assertThat(day).isAfter(straight.day()));
        assertThat(limb.bonyHka(straight.earliest()).high90().degrees()).isCloseTo(0, within(0.1));
        assertThat(limb.bonyHka(straight.day()).middle().degrees()).isCloseTo(0, within(0.1));
        assertThat(limb.bonyHka(straight.latest().orElseThrow()).low90().degrees())
                .isCloseTo(0, within(0.1));
    }

    @Test
    void isLedAwayWhenThePlateGoesOnBeyondStraight() {
        var limb = valgusFemurBeside(80);
        assertThat(limb.bonyHka(TODAY).middle().degrees()).isPositive();
        assertThat(limb.bonyStraight()).isEmpty();
        assertThat(limb.isBonyLedAway()).isTrue();
        assertThat(limb.isLedAway()).isTrue();
    }

    /** A girl's knock-knee with a plate at the distal femur, mLDFA 83.4 degrees and growing. */
    private static LimbOutlook valgusFemurBeside(double mpta) {
        var physis = new TetheredPhysis(
                PhysisSite.DISTAL_FEMUR,
                Cause.IDIOPATHIC_VALGUS,
                Sex.FEMALE,
                10,
                OptionalDouble.empty(),
                List.of(new Film(-0.5, 9), new Film(3.5, 6.5), new Film(7, 3.6)),
                OptionalDouble.empty());
        var tether = new LimbForecast.Tether(
                Deformity.VALGUS, Angle.ofDegrees(87), TetherForecast.of(physis, CentreRates.published()), 7);
        var femur = new LimbForecast.Bone(Angle.ofDegrees(83.4), 0.9, Optional.of(tether));
        var tibia = new LimbForecast.Bone(Angle.ofDegrees(mpta), 0.9, Optional.empty());
        return new LimbOutlook(Side.RIGHT, TODAY, new LimbForecast(femur, tibia), Angle.ZERO, TODAY.plusYears(4));
    }
}
