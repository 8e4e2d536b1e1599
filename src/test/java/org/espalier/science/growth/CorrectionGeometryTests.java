package org.espalier.science.growth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.espalier.science.quantity.Age;
import org.espalier.science.quantity.Angle;
import org.espalier.science.quantity.Length;
import org.espalier.science.quantity.Sex;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CorrectionGeometryTests {

    /**
     * atan(growth/width) worked out by hand to 0.1 degrees; the concept of Bowen and others, Clin Orthop 1985;198:184.
     */
    @ParameterizedTest
    @CsvSource({
        "6, 45, 7.6",
        "6, 50, 6.8",
        "6, 55, 6.2",
        "6, 60, 5.7",
        "6, 65, 5.3",
        "6, 70, 4.9",
        "6, 75, 4.6",
        "6, 80, 4.3",
        "9, 45, 11.3",
        "9, 50, 10.2",
        "9, 55, 9.3",
        "9, 60, 8.5",
        "9, 65, 7.9",
        "9, 70, 7.3",
        "9, 75, 6.8",
        "9, 80, 6.4",
        "9.5, 45, 11.9",
        "9.5, 50, 10.8",
        "9.5, 55, 9.8",
        "9.5, 60, 9.0",
        "9.5, 65, 8.3",
        "9.5, 70, 7.7",
        "9.5, 75, 7.2",
        "9.5, 80, 6.8",
        "13, 45, 16.1",
        "13, 50, 14.6",
        "13, 55, 13.3",
        "13, 60, 12.2",
        "13, 65, 11.3",
        "13, 70, 10.5",
        "13, 75, 9.8",
        "13, 80, 9.2"
    })
    void turnsByGrowthOverWidth(double growth, double width, double degrees) {
        Angle angle = CorrectionGeometry.angle(new Length(growth), new Length(width));
        assertThat(angle.degrees()).isCloseTo(degrees, within(0.05));
        assertThat(CorrectionGeometry.growthFor(angle, new Length(width)).millimetres())
                .isCloseTo(growth, within(1e-9));
    }

    /** A millimetre over 57 mm is about a degree (chart of 1985). */
    @Test
    void turnsADegreeForAMillimetreOverFiftySeven() {
        assertThat(CorrectionGeometry.angle(new Length(1), new Length(57.3)).degrees())
                .isCloseTo(1, within(0.001));
        assertThat(CorrectionGeometry.angle(new Length(0), new Length(57.3))).isEqualTo(Angle.ZERO);
    }

    /** By hand for bones of 43 and 36 cm. */
    @ParameterizedTest
    @CsvSource({"10, 3.0", "20, 11.9", "30, 26.7", "0, 0"})
    void gainsLengthByStraightening(double degrees, double gained) {
        assertThat(CorrectionGeometry.straighteningGain(
                                Angle.ofDegrees(degrees), Length.ofCentimetres(43), Length.ofCentimetres(36))
                        .millimetres())
                .isCloseTo(gained, within(0.05));
    }

    @Test
    void losesHalfTheGrowthThatTurnsIt() {
        assertThat(CorrectionGeometry.lengthLost(Angle.ofDegrees(10), new Length(70))
                        .millimetres())
                .isCloseTo(6.2, within(0.05));
    }

    /** By hand; measured pairs of axis and angle give 2.4 and 3.7 mm a degree (J Clin Med 2024;13:1654). */
    @ParameterizedTest
    @CsvSource({"30, 24, 2.3", "36, 28.5, 2.8", "43, 36, 3.4", "47, 37, 3.6"})
    void movesTheAxisAtTheKnee(double femur, double tibia, double millimetres) {
        assertThat(CorrectionGeometry.axisShiftPerDegree(Length.ofCentimetres(femur), Length.ofCentimetres(tibia))
                        .millimetres())
                .isCloseTo(millimetres, within(0.05));
    }

    @Test
    void assumesWidthsAtTheKneeOnly() {
        assertThat(PhysisWidth.assumed(GrowthPlate.DISTAL_TIBIA, Sex.MALE, Age.ofYears(9)))
                .isEmpty();
        assertThat(PhysisWidth.assumed(GrowthPlate.DISTAL_FEMUR, Sex.MALE, Age.ofYears(2)))
                .contains(new PhysisWidth(new Length(50), true));
        assertThat(PhysisWidth.assumed(GrowthPlate.DISTAL_FEMUR, Sex.FEMALE, Age.ofYears(17)))
                .contains(new PhysisWidth(new Length(70), true));
        assertThat(PhysisWidth.measured(new Length(66)).isAssumed()).isFalse();
    }

    @Test
    void refusesWhatNoPlateDoes() {
        Length width = new Length(70);
        assertThatIllegalArgumentException().isThrownBy(() -> CorrectionGeometry.growthFor(Angle.ofDegrees(90), width));
        assertThatIllegalArgumentException().isThrownBy(() -> CorrectionGeometry.growthFor(Angle.ofDegrees(-1), width));
        assertThatIllegalArgumentException().isThrownBy(() -> CorrectionGeometry.angle(new Length(-1), width));
    }
}
