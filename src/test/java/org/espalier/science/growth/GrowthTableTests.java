package org.espalier.science.growth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.espalier.science.quantity.Age;
import org.espalier.science.quantity.Length;
import org.espalier.science.quantity.Sex;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Every row of the tables growth is reckoned by, written down a second time. Where a table is derived, the figures were
 * worked out outside this program.
 */
class GrowthTableTests {

    /** A figure derived to 1 mm, and what rounding on the way to it adds. */
    private static final double HALF_A_MILLIMETRE = 0.6;

    /** Paley, Bhave, Herzenberg and Bowen, J Bone Joint Surg Am 2000;82-A:1432 (from memory): years, boys, girls. */
    @ParameterizedTest
    @CsvSource(textBlock = """
            0, 5.080, 4.630
            0.25, 4.550, 4.355
            0.5, 4.050, 3.725
            0.75, 3.600, 3.300
            1, 3.240, 2.970
            1.25, 2.975, 2.750
            1.5, 2.825, 2.600
            1.75, 2.700, 2.490
            2, 2.590, 2.390
            2.25, 2.480, 2.295
            2.5, 2.385, 2.200
            2.75, 2.300, 2.125
            3, 2.230, 2.050
            3.5, 2.110, 1.925
            4, 2.000, 1.830
            4.5, 1.890, 1.740
            5, 1.820, 1.660
            5.5, 1.740, 1.580
            6, 1.670, 1.510
            6.5, 1.620, 1.460
            7, 1.570, 1.430
            7.5, 1.520, 1.370
            8, 1.470, 1.330
            8.5, 1.420, 1.290
            9, 1.380, 1.260
            9.5, 1.340, 1.220
            10, 1.310, 1.190
            10.5, 1.280, 1.160
            11, 1.240, 1.130
            11.5, 1.220, 1.100
            12, 1.180, 1.070
            12.5, 1.160, 1.050
            13, 1.130, 1.030
            13.5, 1.100, 1.010
            14, 1.080, 1.000
            14.5, 1.060, 1.000
            15, 1.040, 1.000
            15.5, 1.020, 1.000
            16, 1.010, 1.000
            16.5, 1.010, 1.000
            17, 1.000, 1.000
            18, 1.000, 1.000
            """)
    void multipliesALegToItsLengthAtMaturity(double years, double boys, double girls) {
        assertThat(LegMultiplier.at(Sex.MALE, Age.ofDecimalYears(years))).isCloseTo(boys, within(0.003));
        assertThat(LegMultiplier.at(Sex.FEMALE, Age.ofDecimalYears(years))).isCloseTo(girls, within(0.003));
        assertThat(LegMultiplier.at(Sex.MALE, years)).isCloseTo(boys, within(1e-9));
        assertThat(LegMultiplier.at(Sex.FEMALE, years)).isCloseTo(girls, within(1e-9));
    }

    /**
     * Length at 18 less length at the age, times 0.71 and 0.57; Anderson, Messner and Green, J Bone Joint Surg Am
     * 1964;46-A:1197 (from memory), derived: years, boys' femur and tibia, girls' femur and tibia in centimetres.
     */
    @ParameterizedTest
    @CsvSource(textBlock = """
            1, 23.3, 14.6, 20.5, 13.2
            2, 20.7, 13.0, 18.0, 11.5
            3, 18.6, 11.7, 15.9, 10.2
            4, 16.7, 10.6, 14.0, 9.0
            5, 15.1, 9.6, 12.3, 7.9
            6, 13.6, 8.7, 10.7, 6.9
            7, 12.1, 7.7, 9.3, 6.0
            8, 10.6, 6.8, 7.8, 5.0
            9, 9.1, 5.9, 6.3, 4.0
            10, 7.8, 5.0, 4.9, 3.1
            11, 6.4, 4.1, 3.4, 2.1
            12, 5.1, 3.2, 2.1, 1.2
            13, 3.6, 2.2, 0.9, 0.5
            14, 2.2, 1.2, 0.35, 0.13
            15, 1.1, 0.5, 0.11, 0.03
            16, 0.40, 0.14, 0.04, 0.01
            17, 0.11, 0.04, 0.02, 0
            """)
    void leavesGrowthToThePlatesOfTheKnee(int years, double boysF, double boysT, double girlsF, double girlsT) {
        assertLeft(GrowthPlate.DISTAL_FEMUR, Sex.MALE, years, boysF);
        assertLeft(GrowthPlate.PROXIMAL_TIBIA, Sex.MALE, years, boysT);
        assertLeft(GrowthPlate.DISTAL_FEMUR, Sex.FEMALE, years, girlsF);
        assertLeft(GrowthPlate.PROXIMAL_TIBIA, Sex.FEMALE, years, girlsT);
    }

    private static void assertLeft(GrowthPlate plate, Sex sex, int years, double centimetres) {
        double rounding = centimetres < 0.5 ? 0.06 : HALF_A_MILLIMETRE;
        assertThat(left(plate, sex, years)).isCloseTo(10 * centimetres, within(rounding));
    }

    /** Growth in the year after a birthday, from the same lengths, derived: years, then millimetres as above. */
    @ParameterizedTest
    @CsvSource(textBlock = """
            1, 26, 17, 24, 17
            2, 21, 13, 22, 13
            3, 18, 11, 19, 12
            4, 16, 10, 17, 11
            5, 15, 9.5, 16, 10
            6, 15, 9.3, 15, 9.6
            7, 14, 9.2, 15, 9.5
            8, 15, 9.2, 14, 9.5
            9, 14, 8.8, 14, 9.8
            10, 13, 8.9, 15, 9.8
            11, 14, 9.4, 14, 9.2
            12, 15, 9.9, 11, 7.0
            13, 14, 9.6, 5.9, 3.4
            14, 11, 6.8, 2.3, 0.9
            15, 7, 3.8, 0.8, 0.2
            16, 3, 1.0, 0.1, 0.1
            """)
    void growsYearByYear(int years, double boysF, double boysT, double girlsF, double girlsT) {
        assertYear(GrowthPlate.DISTAL_FEMUR, Sex.MALE, years, boysF);
        assertYear(GrowthPlate.PROXIMAL_TIBIA, Sex.MALE, years, boysT);
        assertYear(GrowthPlate.DISTAL_FEMUR, Sex.FEMALE, years, girlsF);
        assertYear(GrowthPlate.PROXIMAL_TIBIA, Sex.FEMALE, years, girlsT);
    }

    private static void assertYear(GrowthPlate plate, Sex sex, int years, double millimetres) {
        boolean finer = millimetres != Math.rint(millimetres) || millimetres < 1;
        assertThat(left(plate, sex, years) - left(plate, sex, years + 1))
                .isCloseTo(millimetres, within(finer ? 0.06 : HALF_A_MILLIMETRE));
    }

    private static double left(GrowthPlate plate, Sex sex, int years) {
        return GrowthCurve.byLengths(plate, sex)
                .left(Age.ofYears(years))
                .orElseThrow()
                .millimetres();
    }

    /**
     * atan(growth / width) in degrees a year, worked out by hand; concept of Bowen and others, Clin Orthop
     * 1985;198:184.
     */
    @ParameterizedTest
    @CsvSource(textBlock = """
            6, 45, 7.6
            6, 50, 6.8
            6, 55, 6.2
            6, 60, 5.7
            6, 65, 5.3
            6, 70, 4.9
            6, 75, 4.6
            6, 80, 4.3
            9, 45, 11.3
            9, 50, 10.2
            9, 55, 9.3
            9, 60, 8.5
            9, 65, 7.9
            9, 70, 7.3
            9, 75, 6.8
            9, 80, 6.4
            9.5, 45, 11.9
            9.5, 50, 10.8
            9.5, 55, 9.8
            9.5, 60, 9.0
            9.5, 65, 8.3
            9.5, 70, 7.7
            9.5, 75, 7.2
            9.5, 80, 6.8
            13, 45, 16.1
            13, 50, 14.6
            13, 55, 13.3
            13, 60, 12.2
            13, 65, 11.3
            13, 70, 10.5
            13, 75, 9.8
            13, 80, 9.2
            """)
    void turnsByGrowthOverWidth(double growth, double width, double degrees) {
        assertThat(CorrectionGeometry.angle(new Length(growth), new Length(width))
                        .degrees())
                .isCloseTo(degrees, within(0.0501));
    }

    /** Degrees a month at 9 mm a year (femur) and 6 (tibia) over the width assumed for the age, derived. */
    @ParameterizedTest
    @CsvSource(textBlock = """
            MALE, 5, 0.85, 0.62
            MALE, 9, 0.68, 0.49
            MALE, 12, 0.59, 0.43
            MALE, 14, 0.55, 0.40
            MALE, 15, 0.53, 0.39
            FEMALE, 5, 0.85, 0.62
            FEMALE, 9, 0.70, 0.50
            FEMALE, 11, 0.65, 0.47
            FEMALE, 12, 0.62, 0.45
            FEMALE, 13, 0.61, 0.44
            """)
    void turnsByNineAndSixMillimetresAYear(Sex sex, int years, double femur, double tibia) {
        assertThat(monthly(GrowthPlate.DISTAL_FEMUR, sex, years, 9)).isCloseTo(femur, within(0.0101));
        assertThat(monthly(GrowthPlate.PROXIMAL_TIBIA, sex, years, 6)).isCloseTo(tibia, within(0.0101));
    }

    private static double monthly(GrowthPlate plate, Sex sex, int years, double growth) {
        var width = PhysisWidth.assumed(plate, sex, Age.ofYears(years))
                .orElseThrow()
                .length();
        return CorrectionGeometry.angle(new Length(growth), width).degrees() / 12;
    }

    /** About 7 degrees a year at the femur and 5 at the tibia (from memory): 9 mm over 70 to 75, 6 mm over 65 to 70. */
    @Test
    void driftsAsTheChartOf1985Says() {
        assertThat(degrees(9, 75)).isCloseTo(6.8, within(0.05));
        assertThat(degrees(9, 70)).isCloseTo(7.3, within(0.05));
        assertThat(degrees(6, 70)).isCloseTo(4.9, within(0.05));
        assertThat(degrees(6, 65)).isCloseTo(5.3, within(0.05));
    }

    private static double degrees(double growth, double width) {
        return CorrectionGeometry.angle(new Length(growth), new Length(width)).degrees();
    }

    /** Shares of Paley 2000 and of a textbook convention (37 % read, the others from memory). */
    @Test
    void sharesABoneAndALeg() {
        assertThat(GrowthPlate.DISTAL_FEMUR.shareOfBone()).isEqualTo(0.71);
        assertThat(GrowthPlate.PROXIMAL_TIBIA.shareOfBone()).isEqualTo(0.57);
        assertThat(GrowthPlate.DISTAL_FEMUR.shareOfLeg()).isEqualTo(0.37);
        assertThat(GrowthPlate.PROXIMAL_TIBIA.shareOfLeg()).isEqualTo(0.28);
        assertThat(GrowthPlate.DISTAL_TIBIA.shareOfLeg()).isEqualTo(0.20);
        assertThat(GrowthPlate.PROXIMAL_FEMUR.shareOfLeg()).isEqualTo(0.15);
    }
}
