package org.espalier.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Comparator;
import java.util.List;
import org.espalier.plan.Claim.Aspect;
import org.espalier.plan.Claim.Checked;
import org.espalier.plan.Claim.Stands;
import org.junit.jupiter.api.Test;

class ClaimTests {

    @Test
    void everyClaimButCommonPracticeNamesItsStudyItsNumberAndItsDesign() {
        assertThat(Claim.all())
                .filteredOn(claim -> claim.checked() != Checked.PRACTICE)
                .allSatisfy(claim -> assertThat(List.of(claim.study(), claim.n(), claim.design(), claim.level()))
                        .allMatch(cell -> !cell.isBlank()));
    }

    @Test
    void claimsStandInTheOrderOfTheOptions() {
        assertThat(Claim.all()).isSortedAccordingTo(Comparator.comparing(Claim::option));
    }

    @Test
    void noOptionIsPraisedAlone() {
        assertThat(Option.values()).allSatisfy(option -> assertThat(Claim.on(option, Aspect.COURSE))
                .satisfiesAnyOf(
                        claims -> assertThat(claims).noneMatch(claim -> claim.stands() == Stands.FOR),
                        claims -> assertThat(claims).anyMatch(claim -> claim.stands() != Stands.FOR),
                        claims -> assertThat(option)
                                .isIn(
                                        Option.MEDICAL_FIRST,
                                        Option.PLATE_BOTH,
                                        Option.PLATEAU_ELEVATION,
                                        Option.GRADUAL_CORRECTION)));
    }

    @Test
    void namesNoDoseAndNoProduct() {
        assertThat(Claim.all()).allSatisfy(claim -> assertThat(claim.claim() + claim.range())
                .doesNotContainPattern("(?i)\\bmg\\b|\\bug\\b|units/|\u00ae|\u2122"));
    }

    @Test
    void givesForBeforeAgainst() {
        assertThat(Claim.on(Option.PLATE_TIBIA, Aspect.COURSE))
                .extracting(Claim::stands)
                .isSortedAccordingTo(Comparator.naturalOrder())
                .contains(Stands.FOR, Stands.AGAINST);
    }
}
