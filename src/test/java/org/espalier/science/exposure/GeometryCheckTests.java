package org.espalier.science.exposure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import org.espalier.science.alignment.Landmark;
import org.espalier.science.alignment.LimbLandmarks;
import org.espalier.science.growth.LengthForAge;
import org.espalier.science.quantity.Age;
import org.espalier.science.quantity.Length;
import org.espalier.science.quantity.PixelPoint;
import org.espalier.science.quantity.Sex;
import org.espalier.science.quantity.Side;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class GeometryCheckTests {

    private static final LengthCheck EARLIER = lengths(300, 240);

    private static LengthCheck lengths(double femur, double tibia) {
        return new LengthCheck(new Length(femur), new Length(tibia));
    }

    /** A limb whose medial ends lie at the first, lateral ends at the second place across. */
    private static LimbLandmarks limb(double medial, double lateral) {
        Map<Landmark, PixelPoint> points = new EnumMap<>(Landmark.class);
        points.put(Landmark.CONDYLE_MEDIAL, new PixelPoint(medial, 400));
        points.put(Landmark.CONDYLE_LATERAL, new PixelPoint(lateral, 400));
        points.put(Landmark.PLATEAU_MEDIAL, new PixelPoint(medial, 405));
        points.put(Landmark.PLATEAU_LATERAL, new PixelPoint(lateral, 405));
        return new LimbLandmarks(points);
    }

    private static LayoutCheck.Finding finding(LayoutCheck.Kind kind, Side side) {
        return new LayoutCheck.Finding(kind, Optional.of(side));
    }

    @Test
    void findsNothingOnAFilmThatLiesAsItShould() {
        assertThat(LayoutCheck.of(Map.of(Side.RIGHT, limb(160, 100), Side.LEFT, limb(240, 300))))
                .isEmpty();
        assertThat(LayoutCheck.of(Map.of(Side.RIGHT, limb(160, 100)))).isEmpty();
        assertThat(LayoutCheck.of(Map.of(Side.LEFT, limb(100, 160)))).isEmpty();
        assertThat(LayoutCheck.of(Map.of(Side.RIGHT, LimbLandmarks.none()))).isEmpty();
    }

    @Test
    void findsSidesSwappedOrTheFilmMirrored() {
        assertThat(LayoutCheck.of(Map.of(Side.LEFT, limb(160, 100), Side.RIGHT, limb(240, 300))))
                .containsExactly(new LayoutCheck.Finding(LayoutCheck.Kind.SIDES_SWAPPED_OR_MIRRORED, Optional.empty()));
    }

    @Test
    void findsMedialAndLateralSwapped() {
        assertThat(LayoutCheck.of(Map.of(Side.RIGHT, limb(100, 160), Side.LEFT, limb(240, 300))))
                .containsExactly(finding(LayoutCheck.Kind.MEDIAL_LATERAL_SWAPPED, Side.RIGHT));
        assertThat(LayoutCheck.of(Map.of(Side.RIGHT, limb(160, 100), Side.LEFT, limb(300, 240))))
                .containsExactly(finding(LayoutCheck.Kind.MEDIAL_LATERAL_SWAPPED, Side.LEFT));
    }

    @Test
    void findsASingleLimbThatLooksLikeTheOtherSide() {
        assertThat(LayoutCheck.of(Map.of(Side.RIGHT, limb(100, 160))))
                .containsExactly(finding(LayoutCheck.Kind.LOOKS_LIKE_OTHER_SIDE, Side.RIGHT));
        assertThat(LayoutCheck.of(Map.of(Side.LEFT, limb(160, 100))))
                .containsExactly(finding(LayoutCheck.Kind.LOOKS_LIKE_OTHER_SIDE, Side.LEFT));
    }

    /** Anderson, Messner and Green 1964, from memory: 25.92 (1.34) and 20.46 (1.25) cm, boys of 5 years. */
    @Test
    void knowsLengthsForAge() {
        var femur = LengthForAge.of(LengthForAge.Bone.FEMUR, Sex.MALE, Age.ofYears(5))
                .orElseThrow();
        assertThat(femur.mean()).isCloseTo(259.2, within(1e-9));
        assertThat(femur.standardDeviation()).isCloseTo(13.4, within(1e-9));
        var between = LengthForAge.of(LengthForAge.Bone.TIBIA, Sex.MALE, Age.ofMonths(66))
                .orElseThrow();
        assertThat(between.mean()).isCloseTo((204.6 + 221.2) / 2, within(1e-9));
        assertThat(LengthForAge.z(LengthForAge.Bone.TIBIA, Sex.FEMALE, Age.ofYears(18), new Length(368.1)))
                .hasValueSatisfying(z -> assertThat(z).isCloseTo(1, within(1e-9)));
        assertThat(LengthForAge.of(LengthForAge.Bone.FEMUR, Sex.MALE, Age.ofMonths(11)))
                .isEmpty();
        assertThat(LengthForAge.of(LengthForAge.Bone.FEMUR, Sex.MALE, Age.ofMonths(217)))
                .isEmpty();
    }

    @Test
    void findsImpossibleProportionsForAge() {
        assertThat(lengths(259, 205).forAge(Sex.MALE, Age.ofYears(5))).isEmpty();
        assertThat(lengths(259, 140).forAge(Sex.MALE, Age.ofYears(5)))
                .containsExactly(
                        LengthCheck.Finding.TIBIA_UNLIKELY_FOR_AGE, LengthCheck.Finding.PROPORTIONS_IMPOSSIBLE);
        assertThat(lengths(400, 330).forAge(Sex.MALE, Age.ofYears(5)))
                .containsExactly(
                        LengthCheck.Finding.FEMUR_UNLIKELY_FOR_AGE, LengthCheck.Finding.TIBIA_UNLIKELY_FOR_AGE);
        assertThat(lengths(400, 450).forAge(Sex.MALE, Age.ofYears(20)))
                .containsExactly(LengthCheck.Finding.PROPORTIONS_IMPOSSIBLE);
    }

    /** 6.4 and 4.4 mm: √2 times the half-widths of Braun and others, J Orthop Surg Res 2023;18:69. */
    @ParameterizedTest
    @CsvSource({
        "293.7, 240, false, false",
        "293.5, 240, true, false",
        "300, 235.7, false, false",
        "300, 235.5, false, true"
    })
    void bonesDoNotShrink(double femur, double tibia, boolean femurShrank, boolean tibiaShrank) {
        var findings = lengths(femur, tibia).since(EARLIER);
        assertThat(findings.contains(LengthCheck.Finding.FEMUR_SHRANK)).isEqualTo(femurShrank);
        assertThat(findings.contains(LengthCheck.Finding.TIBIA_SHRANK)).isEqualTo(tibiaShrank);
        assertThat(findings).allMatch(LengthCheck.Finding::takesLengthsFromTrend);
    }

    @Test
    void aScaleThatChangedIsNotAnotherChildButAnotherRatioProbablyIs() {
        assertThat(lengths(270, 216).since(EARLIER))
                .containsExactly(LengthCheck.Finding.FEMUR_SHRANK, LengthCheck.Finding.TIBIA_SHRANK);
        assertThat(lengths(270, 240).since(EARLIER))
                .containsExactly(LengthCheck.Finding.FEMUR_SHRANK, LengthCheck.Finding.PROBABLY_ANOTHER_CHILD);
        assertThat(lengths(330, 264).since(EARLIER)).isEmpty();
        assertThatIllegalArgumentException().isThrownBy(() -> lengths(0, 1));
    }
}
