package org.espalier.science.alignment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.espalier.science.quantity.Angle;
import org.espalier.science.quantity.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Worked by hand from the projections named in the methods, printed to 0.0001 degrees. */
class ProjectionTests {

    private static final double PRINTED = 0.0001;

    @ParameterizedTest
    @CsvSource({
        "10, 0, 9.4080, 9.8511, 9.9627, 9.9627, 9.8511, 9.4080",
        "10, 15, 4.2350, 7.2445, 8.6598, 11.2553, 12.4171, 14.4312",
        "0, 15, -5.2362, -2.6640, -1.3378, 1.3378, 2.6640, 5.2362",
        "-8, 10, -10.8891, -9.5937, -8.8317, -7.1046, -6.1520, -4.1044",
        "15, 5, 12.5094, 13.9654, 14.5369, 15.3525, 15.5929, 15.7332",
        "0, 30, -11.1702, -5.7251, -2.8807, 2.8807, 5.7251, 11.1702"
    })
    void turnsAnAxisThatLeansBothWays(
            double frontal,
            double sagittal,
            double in20,
            double in10,
            double in5,
            double out5,
            double out10,
            double out20) {
        TurnedAxis axis = new TurnedAxis(new Angle(frontal), new Angle(sagittal));
        double[] turns = {-20, -10, -5, 5, 10, 20};
        double[] seen = {in20, in10, in5, out5, out10, out20};
        for (int i = 0; i < turns.length; i++) {
            assertThat(axis.seen(new Angle(turns[i])).degrees()).isCloseTo(seen[i], within(PRINTED));
            assertThat(axis.error(new Angle(turns[i])).degrees()).isCloseTo(seen[i] - frontal, within(PRINTED));
        }
        assertThat(axis.seen(Angle.ZERO).degrees()).isCloseTo(frontal, within(1e-12));
    }

    @ParameterizedTest
    @CsvSource({"10, 0, 0", "10, 15, 0.2599", "0, 15, 0.2679", "0, 30, 0.5774"})
    void changesWithTheTurnBySlope(double frontal, double sagittal, double slope) {
        assertThat(new TurnedAxis(new Angle(frontal), new Angle(sagittal)).slope())
                .isCloseTo(slope, within(PRINTED));
    }

    @ParameterizedTest
    @ValueSource(doubles = {-20, -5, 5, 20})
    void turnsTheOtherLimbAlike(double turn) {
        TurnedAxis varus = new TurnedAxis(new Angle(10), new Angle(15));
        TurnedAxis mirrored = new TurnedAxis(new Angle(-10), new Angle(-15));
        assertThat(mirrored.seen(new Angle(turn)).degrees())
                .isCloseTo(-varus.seen(new Angle(turn)).degrees(), within(1e-12));
    }

    @ParameterizedTest
    @CsvSource({"1050, 200, -1.9236", "2900, 200, -0.6967", "1050, 0, 0", "1050, -200, 1.9236"})
    void tiltsALevelLineAwayFromTheCentralRay(double toObject, double height, double tilt) {
        assertThat(new ConeBeam(new Length(toObject))
                        .tilt(new Length(height), new Angle(10))
                        .degrees())
                .isCloseTo(tilt, within(PRINTED));
    }

    @Test
    void refusesWhatCannotStand() {
        assertThatIllegalArgumentException().isThrownBy(() -> new ConeBeam(new Length(0)));
        assertThatIllegalArgumentException().isThrownBy(() -> new TurnedAxis(new Angle(81), Angle.ZERO));
    }
}
