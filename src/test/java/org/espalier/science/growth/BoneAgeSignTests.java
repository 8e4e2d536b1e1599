package org.espalier.science.growth;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.espalier.science.quantity.Age;
import org.espalier.science.quantity.Sex;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Ages in months of two printed tables: a textbook chapter on unequal limbs, tables 46.1 and 46.2, in an excerpt. */
class BoneAgeSignTests {

    @ParameterizedTest
    @CsvSource({
        "TWO_CENTRES, 132, 156",
        "HALF_MOON, 138, 162",
        "RECTANGLE, 144, 168",
        "FUSION_BEGINS, 150, 174",
        "FUSED, 156, 180",
        "HOOK_OF_HAMATE, 120, 150",
        "THUMB_SESAMOID, 132, 156",
        "RADIUS_CAPPED, 144, 168",
        "THUMB_TIP_CLOSED, 156, 180",
        "INDEX_TIP_CLOSED, 162, 186",
        "INDEX_BASE_CLOSED, 168, 192"
    })
    void tellsTheAgeOfASign(BoneAgeSign sign, int girls, int boys) {
        assertThat(sign.age(Sex.FEMALE)).contains(Age.ofMonths(girls));
        assertThat(sign.age(Sex.MALE)).contains(Age.ofMonths(boys));
    }

    @Test
    void knowsTheLastSignsInGirlsAlone() {
        assertThat(List.of(BoneAgeSign.INDEX_METACARPAL_CLOSED, BoneAgeSign.ULNA_CLOSED, BoneAgeSign.RADIUS_CLOSED))
                .allSatisfy(sign -> assertThat(sign.age(Sex.MALE)).isEmpty())
                .extracting(sign -> sign.age(Sex.FEMALE).orElseThrow())
                .containsExactly(Age.ofYears(15), Age.ofYears(16), Age.ofYears(17));
    }

    @ParameterizedTest
    @EnumSource
    void listsTheSignsInTheOrderTheyCome(BoneAgeSign.Part part) {
        assertThat(Stream.of(Sex.values())).allSatisfy(sex -> assertThat(BoneAgeSign.of(part).stream()
                        .flatMap(sign -> sign.age(sex).stream())
                        .toList())
                .hasSizeGreaterThan(4)
                .isSorted());
    }
}
