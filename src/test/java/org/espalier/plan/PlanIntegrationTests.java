package org.espalier.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.espalier.IntegrationTest;
import org.espalier.TestNetwork;
import org.espalier.cost.TariffItem;
import org.espalier.film.TestDoor.Sender;
import org.espalier.patient.ChildId;
import org.espalier.prognosis.Forecast;
import org.espalier.prognosis.PhysisStep;
import org.espalier.prognosis.TestCourse;
import org.espalier.reading.TestReader;
import org.espalier.science.quantity.Angle;
import org.espalier.science.quantity.Side;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.security.access.AccessDeniedException;

@IntegrationTest
class PlanIntegrationTests {

    @Autowired
    PlanService plans;

    @Autowired
    TestReader reader;

    @Autowired
    TestCourse courses;

    @Autowired
    TestNetwork network;

    Sender surgeon;

    @BeforeEach
    void surgeon() {
        surgeon = reader.surgeon();
    }

    private Options right(ChildId child) {
        return surgeon.does(() -> plans.options(child, Side.RIGHT)).orElseThrow();
    }

    private static OptionOutlook of(Options options, Option option) {
        return options.all().get(option.ordinal());
    }

    private ChildId watched() {
        var child = reader.child(surgeon, TestCourse.BIRTH);
        reader.signed(surgeon, reader.film(surgeon, child, LocalDate.of(2026, 8, 3)));
        return child;
    }

    @Test
    void putsAllOptionsInTheirFixedOrderAndLeavesNoneOutWithoutAReason() {
        var options = right(watched());
        assertThat(options.all()).extracting(OptionOutlook::option).containsExactly(Option.values());
        assertThat(options.open())
                .extracting(OptionOutlook::option)
                .containsExactly(
                        Option.WATCH,
                        Option.PLATE_FEMUR,
                        Option.PLATE_TIBIA,
                        Option.PLATE_BOTH,
                        Option.OSTEOTOMY,
                        Option.GRADUAL_CORRECTION);
        assertThat(of(options, Option.TAKE_OUT_NOW).notNow()).contains(NotNow.NOTHING_IN);
        assertThat(of(options, Option.MEDICAL_FIRST).notNow()).contains(NotNow.NO_BONE_DISEASE);
        assertThat(of(options, Option.BRACE).notNow()).contains(NotNow.OLDER_THAN_BRACED);
    }

    @Test
    void watchesABowThatStaysAndTurnsItWithAPlate() {
        var options = right(watched());
        var watch = of(options, Option.WATCH).course();
        var plate = of(options, Option.PLATE_TIBIA).course();
        assertThat(watch.getLast().bonyHka().middle().degrees())
                .isCloseTo(watch.getFirst().bonyHka().middle().degrees(), within(0.01));
        assertThat(plate.getFirst().bonyHka().middle().degrees())
                .isCloseTo(watch.getFirst().bonyHka().middle().degrees(), within(0.5));
        assertThat(plate.getLast().bonyHka().middle())
                .isLessThan(plate.getFirst().bonyHka().middle());
        var reach = of(options, Option.PLATE_TIBIA).physes().getFirst();
        assertThat(reach.step()).isEqualTo(PhysisStep.PLATE_TODAY);
        assertThat(reach.window()).isPresent();
        assertThat(reach.lost().orElseThrow().millimetres()).isPositive();
        assertThat(((Forecast) reach.outlook()).arrival().never()).isBetween(0.0, 1.0);
        assertThat(of(options, Option.PLATE_TIBIA).takes().visits()).isPresent();
    }

    @Test
    void offersWhatCanBeDoneAboutAPlateThatIsIn() {
        var options = right(courses.underWay(surgeon));
        assertThat(options.open())
                .extracting(OptionOutlook::option)
                .contains(
                        Option.EXCHANGE_SCREW,
                        Option.TAKE_OUT_NOW,
                        Option.TAKE_OUT_AT_TARGET,
                        Option.TAKE_OUT_SCREW,
                        Option.DEROTATE_AT_REMOVAL)
                .doesNotContain(Option.PLATE_TIBIA, Option.MOVE_SIDE, Option.RELEASE_AND_WAIT);
        assertThat(of(options, Option.PLATE_TIBIA).notNow()).contains(NotNow.HELD_ALREADY);
        assertThat(of(options, Option.MOVE_SIDE).notNow()).contains(NotNow.NOT_PAST_TARGET);
        var now = of(options, Option.TAKE_OUT_NOW).course();
        var later = of(options, Option.TAKE_OUT_AT_TARGET).course();
        var stays = of(options, Option.WATCH).course();
        assertThat(now.getLast().bonyHka().middle())
                .isGreaterThan(later.getLast().bonyHka().middle());
        assertThat(stays.getLast().bonyHka().middle())
                .isLessThan(later.getLast().bonyHka().middle());
    }

    @Test
    void movesAPlateOnlyWherePastTheTarget() {
        var child = courses.plated(surgeon);
        courses.film(surgeon, child, LocalDate.of(2026, 8, 3), 22);
        var options = right(child);
        assertThat(of(options, Option.MOVE_SIDE).isOpen()).isTrue();
        assertThat(of(options, Option.RELEASE_AND_WAIT).isOpen()).isTrue();
        var moved = of(options, Option.MOVE_SIDE).course();
        assertThat(moved.getLast().bonyHka().middle())
                .isGreaterThan(moved.getFirst().bonyHka().middle());
    }

    @Test
    void keepsWhatWasMeantWithTheOptionsAsTheyStood() {
        var child = watched();
        var intent = new Intent(
                Option.PLATE_TIBIA,
                "a straight leg",
                "it is straight in two years",
                new Angle(-1.5),
                LocalDate.of(2028, 8, 1));
        var id = new ComparisonId(UUID.randomUUID());
        surgeon.does(() -> {
            plans.keep(child, Side.RIGHT, id, intent);
            plans.keep(child, Side.RIGHT, id, intent);
            plans.keep(child, Side.RIGHT, new ComparisonId(UUID.randomUUID()), null);
            return child;
        });
        List<SavedComparison> saved = surgeon.does(() -> plans.saved(child));
        assertThat(saved).hasSize(2);
        assertThat(saved.getFirst().intent()).isEmpty();
        var kept = saved.getLast();
        assertThat(kept.id()).isEqualTo(id);
        assertThat(kept.intent()).contains(intent);
        assertThat(kept.options()).hasSize(6);
        assertThat(kept.options().getFirst().of(OptionCells.Column.COURSE)).isNotEmpty();
        assertThatThrownBy(() -> network.owner()
                        .sql("update plan_comparison set aim = 'another' where id = ?")
                        .param(id.value())
                        .update())
                .hasMessageContaining("is a fact");
    }

    @Test
    void tellsCostsByTheHospitalsTariffsAndWhatHasNone() {
        var options = right(watched());
        assertThat(options.costs()).containsKey(Option.WATCH).hasEntrySatisfying(Option.PLATE_TIBIA, cost -> assertThat(
                        cost.missing())
                .contains(TariffItem.VISIT, TariffItem.FILM, TariffItem.IMPLANT));
        assertThat(options.inWords(of(options, Option.PLATE_TIBIA)).of(OptionCells.Column.COST))
                .contains("No tariffs entered at this hospital")
                .anyMatch(line -> line.startsWith("Without a tariff and not counted: film, implant"));
    }

    @Test
    void leavesMeaningToSurgeonsAndShowsAnotherHospitalNothing() {
        var child = watched();
        var nurse = new Sender(network.staff(surgeon.site().value(), "NURSE"), surgeon.site());
        assertThatThrownBy(() -> nurse.does(() -> {
                    plans.keep(child, Side.RIGHT, new ComparisonId(UUID.randomUUID()), null);
                    return child;
                }))
                .isInstanceOf(AccessDeniedException.class);
        var stranger = reader.surgeon();
        assertThat(stranger.does(() -> plans.options(child, Side.RIGHT))).isEmpty();
        assertThat(stranger.does(() -> plans.saved(child))).isEmpty();
    }
}
