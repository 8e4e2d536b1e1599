package org.espalier.science.planning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.espalier.science.quantity.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The bending of a plate's screws; worked figures, last printed digit. */
class ScrewLoadTests {

    @ParameterizedTest
    @CsvSource({
        "3.1,0,4.5333,2.9247,1",
        "3.1,1.7,4.1233,2.6602,0.9096",
        "3.0,0,3.9761,2.6507,1",
        "3.0,1.6,3.6544,2.4363,0.9191",
        "3.5,1.7,6.9562,3.9750,0.9443",
        "2.4,0,1.6286,1.3572,1",
        "4.5,1.75,19.6685,8.7416,0.9771"
    })
    void knowsItsSection(double core, double cannula, double second, double modulus, double ofSolid) {
        ScrewShank shank = ScrewShank.cannulated(core, cannula);
        assertThat(shank.secondMoment()).isCloseTo(second, within(1e-4));
        assertThat(shank.sectionModulus()).isCloseTo(modulus, within(1e-4));
        assertThat(shank.ofSolid()).isCloseTo(ofSolid, within(1e-4));
    }

    @ParameterizedTest
    @CsvSource({
        "3.1,0,85.5,171.0,256.4,427.4,683.8",
        "3.1,1.7,94.0,188.0,281.9,469.9,751.8",
        "2.4,0,184.2,368.4,552.6,921.0,1473.7",
        "3.5,0,59.4,118.8,178.2,297.0,475.1"
    })
    void bendsHarderTheFurtherItStandsOff(
            double core, double cannula, double one, double two, double three, double five, double eight) {
        ScrewShank shank = ScrewShank.cannulated(core, cannula);
        double[] exposed = {1, 2, 3, 5, 8};
        double[] expected = {one, two, three, five, eight};
        for (int i = 0; i < exposed.length; i++) {
            assertThat(shank.cantileverStress(250, new Length(exposed[i]))).isCloseTo(expected[i], within(0.06));
        }
    }

    @ParameterizedTest
    @CsvSource({
        "0,1",
        "0.1,1.2094",
        "0.2,1.4350",
        "0.3,1.6738",
        "0.5,2.1812",
        "0.75,2.8543",
        "1.0,3.5550",
        "1.5,5.0051",
        "2.0,6.4914"
    })
    void comparesAnExposedScrewWithASeatedOne(double height, double index) {
        assertThat(new LoadIndex(1).against(new Length(height))).isCloseTo(index, within(1e-4));
    }

    @ParameterizedTest
    @CsvSource({
        "STEEL,500,0.1093", "STEEL,1000,0.1300", "STEEL,3000,0.1711", "STEEL,5000,0.1944",
        "TITANIUM_ALLOY,500,0.1258", "TITANIUM_ALLOY,1000,0.1496", "TITANIUM_ALLOY,3000,0.1969",
                "TITANIUM_ALLOY,5000,0.2238"
    })
    void liesInItsBed(LoadIndex.Material material, double bed, double lambda) {
        assertThat(LoadIndex.of(ScrewShank.solid(3.1), material, bed).perMillimetre())
                .isCloseTo(lambda, within(1e-4));
    }

    /** 250 N, steel in a bed of 3000 N/mm². */
    @ParameterizedTest
    @CsvSource({"0,161.1,172.9", "2,286.3,311.0", "5,506.9,554.2"})
    void worksOutTheStress(double exposed, double solid, double cannulated) {
        assertThat(stress(ScrewShank.solid(3.1), exposed)).isCloseTo(solid, within(0.06));
        assertThat(stress(ScrewShank.cannulated(3.1, 1.7), exposed)).isCloseTo(cannulated, within(0.06));
    }

    @ParameterizedTest
    @CsvSource({
        "STEEL,1000,2,1.577",
        "STEEL,1000,5,2.581",
        "STEEL,3000,2,1.778",
        "STEEL,3000,5,3.147",
        "TITANIUM_ALLOY,3000,2,1.908",
        "TITANIUM_ALLOY,3000,5,3.511"
    })
    void risesWithAFirmerBed(LoadIndex.Material material, double bed, double exposed, double index) {
        assertThat(LoadIndex.of(ScrewShank.solid(3.1), material, bed).against(new Length(exposed)))
                .isCloseTo(index, within(1e-3));
    }

    @Test
    void gradesTheLoad() {
        LoadIndex index = LoadIndex.of(ScrewShank.solid(3.1), LoadIndex.Material.STEEL, 3000);
        assertThat(index.grade(new Length(0.5))).isEqualTo(LoadIndex.Grade.LOW);
        assertThat(index.grade(new Length(2))).isEqualTo(LoadIndex.Grade.RAISED);
        assertThat(index.grade(new Length(5))).isEqualTo(LoadIndex.Grade.HIGH);
    }

    /** Yield stresses of the standards (ISO 5832-1 annealed 190 and cold worked 690, ISO 5832-3 780; from memory). */
    @ParameterizedTest
    @CsvSource({"190,556,505,258,185", "690,2018,1836,936,673", "780,2281,2075,1059,760", "795,2325,2115,1079,775"})
    void yieldsAtTheSurface(double yield, double solid, double cannulated, double thin, double headForce) {
        assertThat(ScrewShank.solid(2.4).firstYieldMoment(yield)).isCloseTo(thin, within(0.6));
        assertThat(ScrewShank.solid(3.1).firstYieldMoment(yield) / 3).isCloseTo(headForce, within(0.6));
        assertThat(ScrewShank.solid(3.1).firstYieldMoment(yield)).isCloseTo(solid, within(0.6));
        assertThat(ScrewShank.cannulated(3.1, 1.7).firstYieldMoment(yield)).isCloseTo(cannulated, within(0.6));
    }

    @Test
    void refusesACannulaThatLeavesNothing() {
        assertThatIllegalArgumentException().isThrownBy(() -> ScrewShank.cannulated(3, 3));
        assertThatIllegalArgumentException().isThrownBy(() -> new LoadIndex(0));
    }

    private static double stress(ScrewShank shank, double exposed) {
        return 250
                * LoadIndex.of(shank, LoadIndex.Material.STEEL, 3000).momentPerNewton(new Length(exposed))
                / shank.sectionModulus();
    }
}
