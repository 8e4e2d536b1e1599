package org.espalier.outcomes;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.espalier.outcomes.TestOutcomes.BIRTH;
import static org.espalier.outcomes.TestOutcomes.PLATE;
import static org.espalier.outcomes.TestOutcomes.TIBIA;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.espalier.IntegrationTest;
import org.espalier.cost.DiagnosisGroup;
import org.espalier.film.TestDoor.Sender;
import org.espalier.outcomes.TestOutcomes.Film;
import org.espalier.patient.ChildId;
import org.espalier.reading.TestReader;
import org.espalier.science.quantity.Side;
import org.espalier.science.statistics.CumulativeIncidence;
import org.espalier.science.statistics.Proportion;
import org.espalier.treatment.CareStep;
import org.espalier.treatment.Complication;
import org.espalier.treatment.ImplantFinding;
import org.espalier.treatment.Maturity;
import org.espalier.treatment.ProcedureKind;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.springframework.beans.factory.annotation.Autowired;

/**
 * One hospital whose seven courses are known, so that every figure can be worked out by hand. All were plated on 1
 * March 2021 but one of another hospital.
 */
@IntegrationTest
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class OutcomeIntegrationTests {

    static final Span SPAN = new Span(2021, 2022);
    static final LocalDate FEBRUARY = LocalDate.of(2022, 2, 1);

    @Autowired
    TestReader reader;

    @Autowired
    TestOutcomes courses;

    @Autowired
    OutcomeService outcomes;

    Sender surgeon;
    ChildId straight;
    ChildId over;
    ChildId tooSoon;
    ChildId broken;
    ChildId grown;
    ChildId gone;

    @BeforeAll
    void sevenCourses() {
        surgeon = reader.surgeon();
        straight = out(LocalDate.of(2022, 3, 1), film(2021, 9, 8), film(2022, 2, 14.5), film(2024, 3, 8.5));
        over = out(LocalDate.of(2022, 9, 1), film(2021, 9, 8), film(2022, 2, 12), film(2022, 8, 19));
        tooSoon = out(LocalDate.of(2022, 3, 1), film(2021, 9, 8), film(2022, 2, 10), film(2024, 2, 9));
        broken = courses.child(surgeon, film(2021, 9, 2));
        var implant = courses.plate(surgeon, broken, PLATE, false);
        var day = LocalDate.of(2021, 12, 1);
        courses.fact(
                surgeon,
                broken,
                new ImplantFinding(
                        day, implant, ImplantFinding.Part.METAPHYSEAL_SCREW, ImplantFinding.Seen.BROKEN, null, null));
        courses.fact(
                surgeon,
                broken,
                new Complication(day, Complication.Kind.DEVICE, Complication.Grade.III, null, Side.RIGHT, null));
        courses.act(
                surgeon, broken, LocalDate.of(2021, 12, 10), ProcedureKind.METAPHYSEAL_SCREW_EXCHANGED, implant, false);
        grown = courses.child(surgeon, film(2022, 9, 9));
        courses.plate(surgeon, grown, PLATE, false);
        courses.fact(
                surgeon,
                grown,
                new Maturity(
                        LocalDate.of(2022, 10, 1),
                        TIBIA.side(),
                        TIBIA.bone(),
                        TIBIA.end(),
                        "A reader",
                        LocalDate.of(2022, 10, 1),
                        null));
        gone = courses.child(surgeon, film(2021, 9, 8));
        courses.plate(surgeon, gone, PLATE, false);
        courses.fact(
                surgeon,
                gone,
                new CareStep(
                        LocalDate.of(2022, 1, 1), null, CareStep.Step.ENDED, CareStep.EndReason.LEFT_NETWORK, null));
        courses.plate(surgeon, courses.child(surgeon), PLATE, true);
        foretell();
        courses.renew(surgeon.site());
    }

    private void foretell() {
        courses.foretold(surgeon, straight, FEBRUARY, 0.1, 82, 85, 86, 87, 90);
        courses.foretold(surgeon, over, FEBRUARY, 0.2, 79.5, 82.5, 83.5, 84.5, 87.5);
        courses.foretold(surgeon, tooSoon, FEBRUARY, 0.5, 84, 86.5, 87, 87.5, 90);
    }

    private ChildId out(LocalDate day, Film... films) {
        var child = courses.child(surgeon, films);
        var implant = courses.plate(surgeon, child, PLATE, false);
        courses.act(surgeon, child, day, ProcedureKind.PLATE_OUT, implant, false);
        return child;
    }

    private static Film film(int year, int month, double straightened) {
        return Film.of(year, month, straightened);
    }

    private Results results() {
        return surgeon.does(() -> outcomes.results(surgeon.site(), SPAN));
    }

    @Test
    void saysHowEachGrowthPlateEndedAndWhoIsLeftOut() {
        var results = results();
        assertThat(results.plates()).hasSize(6);
        assertThat(results.children()).isEqualTo(6);
        assertThat(results.isFew()).isTrue();
        assertThat(results.leftOut()).isEqualTo(Map.of(LeftOut.ELSEWHERE, 1));
        for (var came : List.of(Came.STRAIGHT, Came.OVERSHOT, Came.SHORT, Came.FAILED, Came.GROWTH_ENDED)) {
            assertThat(results.ended(came)).as(came.name()).isEqualTo(1);
        }
        assertThat(results.running()).isEqualTo(1);
        var later = surgeon.does(() -> outcomes.results(surgeon.site(), new Span(2022, 2026)));
        assertThat(later.plates()).isEmpty();
    }

    /**
     * Days since the plate: 275 broken, 306 gone from care, 365 straight and taken out short, 549 past the target, 579
     * grown. So at a year 1/6 has failed; of the 5/6 four are left at risk at 365 days, two of whom end: 5/24 each. Of
     * the two that are left each takes half of 5/12.
     */
    @Test
    void countsWhatCameByMonthsSinceThePlate() {
        var curve = results().curve().orElseThrow();
        assertThat(share(curve, Came.FAILED, 12)).isEqualTo(1 / 6.0, within(1e-9));
        assertThat(share(curve, Came.STRAIGHT, 12)).isEqualTo(5 / 24.0, within(1e-9));
        assertThat(share(curve, Came.SHORT, 12)).isEqualTo(5 / 24.0, within(1e-9));
        assertThat(share(curve, Came.OVERSHOT, 18)).isZero();
        assertThat(share(curve, Came.OVERSHOT, 24)).isEqualTo(5 / 24.0, within(1e-9));
        assertThat(share(curve, Came.GROWTH_ENDED, 24)).isEqualTo(5 / 24.0, within(1e-9));
        assertThat(curve.atRisk(11)).isEqualTo(4);
    }

    private static double share(CumulativeIncidence<Came> curve, Came came, double months) {
        return curve.at(came, months).orElseThrow().share();
    }

    @Test
    void saysWhereTheyStoodWhenTheyWereLetGo() {
        var results = results();
        assertThat(results.letGo(Came.STRAIGHT)).contains(new Proportion(1, 4));
        assertThat(results.letGo(Came.OVERSHOT)).contains(new Proportion(1, 4));
        assertThat(results.medianPastTarget().orElseThrow()).isEqualTo(4, within(0.05));
        assertThat(plate(tooSoon).past().orElseThrow()).isEqualTo(-5, within(0.05));
        assertThat(plate(grown).past().orElseThrow()).isEqualTo(-6, within(0.05));
        assertThat(plate(straight).months()).isEqualTo(365 / 30.4375, within(1e-9));
    }

    /** Of two filmed after two years one went back 6 degrees, one 1; the third, let go in 2022, was not filmed. */
    @Test
    void saysWhatDriftedBackAndWhoWasNotFilmed() {
        var results = results();
        assertThat(results.drifted()).contains(new Proportion(1, 2));
        assertThat(results.after(After.NOT_FILMED)).isEqualTo(1);
        assertThat(results.after(After.NOT_DUE)).isEqualTo(3);
        assertThat(plate(straight).drift().orElseThrow()).isEqualTo(6, within(0.05));
        assertThat(plate(tooSoon).drift().orElseThrow()).isEqualTo(1, within(0.05));
    }

    @Test
    void countsPlatesWithAComplicationAndThoseThatBroughtAChildBack() {
        var results = results();
        assertThat(results.complications()).contains(new Proportion(1, 6));
        assertThat(results.back()).contains(new Proportion(1, 6));
        assertThat(plate(broken).back()).isTrue();
    }

    @Test
    void saysWhatChildrenTheyWere() {
        var mix = plate(straight).mix();
        assertThat(mix.diagnosis()).isEqualTo(DiagnosisGroup.NOT_SAID);
        assertThat(mix.ageYears()).isEqualTo(7);
        var growthEnds = BIRTH.plusDays(Math.round(14 * 365.25));
        assertThat(mix.growthYears().orElseThrow())
                .isEqualTo((growthEnds.toEpochDay() - PLATE.toEpochDay()) / 365.25, within(0.01));
    }

    /**
     * Left as it came: 0.5, 3 and 5. The first lies between the middle, 1, and the upper quarter, 0; the second between
     * 2.5 and 3.5, its middle 3.5; the third beyond all. Of 5.03 months each.
     */
    @Test
    void holdsEachForecastAgainstTheFilmThatCameLater() {
        var honesty = surgeon.does(() -> outcomes.honesty(surgeon.site()));
        assertThat(honesty.judged()).hasSize(3).allSatisfy(one -> {
            assertThat(one.filmOn()).isEqualTo(FEBRUARY);
            assertThat(one.beforehand()).isTrue();
            assertThat(one.months()).isEqualTo(153 / 30.4375, within(1e-9));
            assertThat(one.line().orElseThrow()).isEqualTo(7 - 8 * 153 / 212.0, within(1e-9));
        });
        assertThat(honesty.inHalf()).contains(new Proportion(2, 3));
        assertThat(honesty.inNineTenths()).contains(new Proportion(2, 3));
        assertThat(honesty.places().stream().mapToInt(Integer::intValue).sum()).isEqualTo(3);
        assertThat(honesty.places().getLast()).isEqualTo(1);
        double bias = (1 - 0.5 + 3.5 - 3 + 0 - 5) / 3;
        assertThat(honesty.bias().orElseThrow().meanDifference()).isEqualTo(bias, within(0.05));
        var ranked = honesty.ranked().orElseThrow();
        double line = 7 - 8 * 153 / 212.0;
        assertThat(ranked.limbs()).isEqualTo(3);
        assertThat(ranked.line())
                .isEqualTo((Math.abs(line - 0.5) + Math.abs(line - 3) + Math.abs(line - 5)) / 3, within(0.05));
        assertThat(ranked.forecast()).isBetween(1.0, 2.5);
    }

    /** Never reached: the third, foretold with 1/2. Brier (0.01 + 0.04 + 0.25) / 3. */
    @Test
    void holdsEachChanceOfNeverAgainstWhatCame() {
        var honesty = surgeon.does(() -> outcomes.honesty(surgeon.site()));
        var known = honesty.chances().stream()
                .filter(one -> List.of(0.1, 0.2, 0.5).contains(one.foretold()))
                .toList();
        assertThat(known).extracting(Honesty.Chance::never).containsExactly(false, true, false);
        assertThat(plate(straight).reachedOn()).contains(FEBRUARY);
        assertThat(plate(over).reachedOn()).contains(LocalDate.of(2022, 8, 1));
        assertThat(plate(tooSoon).neverReached()).contains(true);
        assertThat(plate(gone).neverReached()).isEqualTo(Optional.empty());
        var alone = new Honesty(honesty.judged(), known, 0);
        assertThat(alone.brier().orElseThrow()).isEqualTo(0.1, within(1e-9));
        assertThat(alone.expectedNevers()).isEqualTo(0.8, within(1e-9));
        assertThat(alone.chart()).hasSize(3);
    }

    private PlateCourse plate(ChildId child) {
        return results().plates().stream()
                .filter(plate -> plate.child().equals(child))
                .findFirst()
                .orElseThrow();
    }
}
