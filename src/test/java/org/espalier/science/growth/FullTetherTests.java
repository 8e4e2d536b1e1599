package org.espalier.science.growth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.espalier.science.quantity.Sex;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Degrees a month with one side held, by growth in the year after a birthday over the width assumed at it. The values
 * were derived outside this program from the lengths of 1964 (J Bone Joint Surg Am 46-A:1197) with shares of 0.71 and
 * 0.57; the tolerance lets the width grow during that year.
 */
class FullTetherTests {

    @ParameterizedTest(name = "{0} at {1}")
    @CsvSource({
        "MALE, 5, 1.43, 0.97",
        "MALE, 9, 1.02, 0.72",
        "MALE, 12, 0.96, 0.70",
        "MALE, 14, 0.65, 0.45",
        "MALE, 15, 0.41, 0.24",
        "FEMALE, 5, 1.44, 1.02",
        "FEMALE, 9, 1.10, 0.81",
        "FEMALE, 11, 0.98, 0.71",
        "FEMALE, 12, 0.76, 0.52",
        "FEMALE, 13, 0.40, 0.25"
    })
    void turnsByGrowthOverWidth(Sex sex, int birthday, double femur, double tibia) {
        assertThat(FullTether.of(GrowthPlate.DISTAL_FEMUR, sex).degreesAMonth(birthday + 0.5))
                .isCloseTo(femur, within(0.06));
        assertThat(FullTether.of(GrowthPlate.PROXIMAL_TIBIA, sex).degreesAMonth(birthday + 0.5))
                .isCloseTo(tibia, within(0.06));
    }

    @Test
    void standsStillOnceGrowthHasEnded() {
        var tether = FullTether.of(GrowthPlate.DISTAL_FEMUR, Sex.MALE);
        assertThat(tether.degreesAMonth(17)).isPositive();
        assertThat(tether.degreesAMonth(18.5)).isZero();
        assertThat(tether.degreesAMonth(0)).isPositive();
    }
}
