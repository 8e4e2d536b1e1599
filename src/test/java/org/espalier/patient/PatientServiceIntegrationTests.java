package org.espalier.patient;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.UUID;
import org.espalier.IntegrationTest;
import org.espalier.TestNetwork;
import org.espalier.access.SiteId;
import org.espalier.kit.Who;
import org.espalier.platform.Ids;
import org.espalier.science.quantity.Sex;
import org.espalier.science.quantity.Side;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.security.access.AccessDeniedException;

@IntegrationTest
class PatientServiceIntegrationTests {

    private static final LocalDate BORN = LocalDate.of(2019, 7, 14);

    @Autowired
    PatientService patients;

    @Autowired
    TestNetwork network;

    @Autowired
    Ids ids;

    SiteId site;
    UUID nurse;

    @BeforeEach
    void people() {
        site = new SiteId(network.site());
        nurse = network.staff(site.value(), "NURSE");
    }

    @Test
    void registersAChildWithBothLimbsAndTheirPhyses() {
        var child = register("Quillfeather", "Ana Maria", "L-1");
        assertThat(child.version()).isEqualTo(1);
        assertThat(child.data()).contains(data("Quillfeather", "Ana Maria", "L-1"));
        var limbs = network.as(nurse, () -> patients.limbs(child.id()));
        assertThat(limbs).extracting(Limb::side).containsExactly(Side.RIGHT, Side.LEFT);
        assertThat(limbs.getFirst().physes())
                .extracting(Physis::bone, Physis::end)
                .containsExactly(
                        org.assertj.core.groups.Tuple.tuple(Bone.FEMUR, BoneEnd.DISTAL),
                        org.assertj.core.groups.Tuple.tuple(Bone.TIBIA, BoneEnd.PROXIMAL),
                        org.assertj.core.groups.Tuple.tuple(Bone.TIBIA, BoneEnd.DISTAL));
    }

    @Test
    void registersOnceHoweverOftenItIsSent() {
        var id = new ChildId(ids.next());
        var data = data("Once", "Only", "L-2");
        network.as(nurse, () -> patients.register(site, id, data));
        assertThat(network.as(nurse, () -> patients.register(site, id, data))).isInstanceOf(SaveOutcome.Saved.class);
        assertThat(list()).hasSize(1);
    }

    @Test
    void saysWhoHoldsALocalNumberThatIsTaken() {
        var first = register("First", "A", "L-3");
        var second =
                network.as(nurse, () -> patients.register(site, new ChildId(ids.next()), data("Second", "B", "L-3")));
        assertThat(second).isInstanceOfSatisfying(SaveOutcome.NumberTaken.class, taken -> assertThat(
                        taken.holder().id())
                .isEqualTo(first.id()));
        assertThat(list()).hasSize(1);
    }

    @Test
    void letsTwoHospitalsUseTheSameNumber() {
        register("First", "A", "L-4");
        var elsewhere = new SiteId(network.site());
        var colleague = network.staff(elsewhere.value(), "NURSE");
        assertThat(network.as(
                        colleague,
                        () -> patients.register(elsewhere, new ChildId(ids.next()), data("Other", "B", "L-4"))))
                .isInstanceOf(SaveOutcome.Saved.class);
    }

    @Test
    void refusesAChildBornTomorrow() {
        var data = new ChildData("Unborn", null, LocalDate.of(2999, 1, 1), null, null);
        assertThatThrownBy(() -> network.as(nurse, () -> patients.register(site, new ChildId(ids.next()), data)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("2999-01-01");
    }

    @Test
    void changesWhoAChildIs() {
        var child = register("Old", "Name", "L-5");
        var outcome = change(child, child.version(), data("New", "Name", "L-6"));
        assertThat(outcome).isInstanceOfSatisfying(SaveOutcome.Saved.class, saved -> {
            assertThat(saved.child().version()).isEqualTo(2);
            assertThat(saved.child().data()).contains(data("New", "Name", "L-6"));
        });
    }

    @Test
    void keepsTheirsAndGivesItBackWhenSomebodyWasFaster() {
        var child = register("Slow", "Reader", "L-7");
        change(child, 1, data("Slow", "Theirs", "L-7"));
        assertThat(change(child, 1, data("Slow", "Mine", "L-7")))
                .isInstanceOfSatisfying(
                        SaveOutcome.ChangedMeanwhile.class,
                        conflict -> assertThat(conflict.theirs().data()).contains(data("Slow", "Theirs", "L-7")));
        assertThat(open(nurse, child).data()).contains(data("Slow", "Theirs", "L-7"));
    }

    @Test
    void refusesANumberOfAnotherChildInAChange() {
        register("Holder", "A", "L-8");
        var child = register("Wanter", "B", "L-9");
        assertThat(change(child, 1, data("Wanter", "B", "L-8"))).isInstanceOf(SaveOutcome.NumberTaken.class);
        assertThat(open(nurse, child).version()).isEqualTo(1);
    }

    @Test
    void showsInitialsAndMonthOfBirthToRolesWithoutNeed() {
        var child = register("Quillfeather", "Ana Maria", "L-10");
        for (var role : List.of("STOREKEEPER", "COST_ADMINISTRATOR", "AUDITOR", "PRIVACY_OFFICER")) {
            var reader = network.staff(site.value(), role);
            assertThat(open(reader, child).who())
                    .as(role)
                    .isEqualTo(new Who.Initialled("A. M. Q.", java.time.YearMonth.of(2019, 7), Sex.FEMALE));
        }
    }

    @Test
    void keepsInitialsInStepWithTheName() {
        var child = register("Quillfeather", "Ana", "L-11");
        change(child, 1, new ChildData("Øster-Vale", null, LocalDate.of(2018, 2, 3), null, "L-11"));
        var auditor = network.staff(site.value(), "AUDITOR");
        assertThat(open(auditor, child).who())
                .isEqualTo(new Who.Initialled("Ø. V.", java.time.YearMonth.of(2018, 2), null));
    }

    @Test
    void listsInTheOrderAsked() {
        register("Zander", "A", "L-12", LocalDate.of(2020, 1, 1));
        register("Álvarez", "B", "L-13", LocalDate.of(2015, 1, 1));
        register("Moss", "C", "L-14", LocalDate.of(2022, 1, 1));
        assertThat(names(ChildOrder.NAME)).containsExactly("Álvarez", "Moss", "Zander");
        assertThat(names(ChildOrder.YOUNGEST)).containsExactly("Moss", "Zander", "Álvarez");
        assertThat(names(ChildOrder.LATEST)).containsExactly("Moss", "Álvarez", "Zander");
    }

    @Test
    void matchesAFilmByNumberUnlessTheBirthDateDiffers() {
        var child = register("Match", "A", "L-15");
        assertThat(network.as(nurse, () -> patients.match(site, " L-15 ", BORN)))
                .contains(child.id());
        assertThat(network.as(nurse, () -> patients.match(site, "L-15", null))).contains(child.id());
        assertThat(network.as(nurse, () -> patients.match(site, "L-15", BORN.plusDays(1))))
                .isEmpty();
        assertThat(network.as(nurse, () -> patients.match(site, "L-16", BORN))).isEmpty();
    }

    @Test
    void followsAFurtherPhysisFromTheFirstTimeItIsAskedFor() {
        var child = register("Fibula", "A", "L-17");
        var first = network.as(nurse, () -> patients.physis(child.id(), Side.LEFT, Bone.FIBULA, BoneEnd.DISTAL));
        assertThat(network.as(nurse, () -> patients.physis(child.id(), Side.LEFT, Bone.FIBULA, BoneEnd.DISTAL)))
                .isEqualTo(first);
    }

    @Test
    void refusesRolesThatMayNot() {
        var storekeeper = network.staff(site.value(), "STOREKEEPER");
        assertThatThrownBy(() -> network.as(storekeeper, () -> patients.find(site, "anybody", Locale.ENGLISH)))
                .isInstanceOf(AccessDeniedException.class);
    }

    private Child register(String family, String given, String number) {
        return register(family, given, number, BORN);
    }

    private Child register(String family, String given, String number, LocalDate born) {
        var data = new ChildData(family, given, born, Sex.FEMALE, number);
        var outcome = network.as(nurse, () -> patients.register(site, new ChildId(ids.next()), data));
        return ((SaveOutcome.Saved) outcome).child();
    }

    private SaveOutcome change(Child child, long version, ChildData data) {
        return network.as(nurse, () -> patients.change(child.id(), version, data));
    }

    private Child open(UUID staff, Child child) {
        return network.as(staff, () -> patients.open(child.id(), "course")).orElseThrow();
    }

    private List<Child> list() {
        return network.as(nurse, () -> patients.list(site, ChildOrder.NAME, 0));
    }

    private List<String> names(ChildOrder order) {
        return network.as(nurse, () -> patients.list(site, order, 0)).stream()
                .map(child -> child.data().orElseThrow().familyName())
                .toList();
    }

    private static ChildData data(String family, String given, String number) {
        return new ChildData(family, given, BORN, Sex.FEMALE, number);
    }
}
