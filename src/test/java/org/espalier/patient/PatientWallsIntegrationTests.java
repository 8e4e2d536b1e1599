package org.espalier.patient;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.sql.SQLException;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.UUID;
import org.espalier.IntegrationTest;
import org.espalier.TestNetwork;
import org.espalier.access.SiteId;
import org.espalier.kit.Who;
import org.espalier.platform.Caller;
import org.espalier.platform.Callers;
import org.espalier.platform.Ids;
import org.espalier.science.quantity.Length;
import org.espalier.science.quantity.Sex;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.transaction.support.TransactionTemplate;

/** What a member of staff of another hospital, and of this one without need, gets of a child: nothing. */
@IntegrationTest
class PatientWallsIntegrationTests {

    private static final LocalDate BORN = LocalDate.of(2019, 7, 14);

    @Autowired
    PatientService patients;

    @Autowired
    ExaminationService examinations;

    @Autowired
    TestNetwork network;

    @Autowired
    JdbcClient jdbc;

    @Autowired
    TransactionTemplate transactions;

    @Autowired
    Ids ids;

    SiteId here;
    UUID nurse;
    UUID stranger;
    ChildId child;

    @BeforeEach
    void aChildHereAndASurgeonElsewhere() {
        here = new SiteId(network.site());
        nurse = network.staff(here.value(), "NURSE");
        stranger = network.staff(network.site(), "SURGEON");
        child = new ChildId(ids.next());
        network.as(
                nurse, () -> patients.register(here, child, new ChildData("Walled", "Wanda", BORN, Sex.FEMALE, "W-1")));
        network.as(nurse, () -> {
            var size = new BodySize(LocalDate.of(2024, 1, 1), Length.ofCentimetres(110), null);
            examinations.record(child, new FactId(ids.next()), size);
            return child;
        });
    }

    @Test
    void hidesTheChildFromAnotherHospitalByEveryDoor() {
        assertThat(network.as(stranger, () -> patients.open(child, "course"))).isEmpty();
        assertThat(network.as(stranger, () -> patients.find(here, "Walled", Locale.ENGLISH)))
                .isEmpty();
        assertThat(network.as(stranger, () -> patients.find(here, "W-1", Locale.ENGLISH)))
                .isEmpty();
        assertThat(network.as(stranger, () -> patients.list(here, ChildOrder.NAME, 0)))
                .isEmpty();
        assertThat(network.as(stranger, () -> patients.match(here, "W-1", BORN)))
                .isEmpty();
        assertThat(network.as(stranger, () -> patients.limbs(child))).isEmpty();
        assertThat(network.as(stranger, () -> examinations.of(child)).sizes().facts())
                .isEmpty();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "child",
                "child_identity",
                "limb",
                "physis",
                "body_size",
                "bone_age",
                "diagnosis",
                "clinical_examination",
                "lab_result",
                "bone_disease",
                "imaging_report",
                "tibia_vara_stage"
            })
    void hidesEveryRowFromAnotherHospitalsSql(String table) {
        assertThat(network.as(stranger, () -> jdbc.sql("select count(*) from " + table)
                        .query(Long.class)
                        .single()))
                .isZero();
    }

    /**
     * Tables that hold a row of the child, as an empty one asks nobody; {@code WallsCatalogueIntegrationTests} has all.
     */
    @ParameterizedTest
    @ValueSource(strings = {"child", "child_identity", "limb", "physis", "body_size"})
    void refusesEveryRowWhenNobodyAsks(String table) {
        assertThatThrownBy(() -> transactions.execute(status -> jdbc.sql("select count(*) from " + table)
                        .query(Long.class)
                        .single()))
                .rootCause()
                .isInstanceOfSatisfying(
                        SQLException.class, e -> assertThat(e.getSQLState()).isEqualTo("ES001"));
    }

    @Test
    void keepsAnotherHospitalFromChangingOrAddingAnything() {
        var data = new ChildData("Stolen", null, BORN, null, null);
        assertThatThrownBy(() -> network.as(stranger, () -> patients.change(child, 1, data)))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> network.as(stranger, () -> patients.register(here, new ChildId(ids.next()), data)))
                .isInstanceOf(RuntimeException.class);
        assertThat(network.as(stranger, () -> jdbc.sql("update child set initials = 'X'")
                        .update()))
                .isZero();
        assertThat(network.as(stranger, () -> jdbc.sql("update child_identity set family_name = 'X'")
                        .update()))
                .isZero();
    }

    @Test
    void hidesTheNameFromTheSqlOfRolesWithoutNeed() {
        for (var role : List.of("STOREKEEPER", "COST_ADMINISTRATOR", "AUDITOR", "PRIVACY_OFFICER")) {
            var reader = network.staff(here.value(), role);
            assertThat(count(reader, "child")).as(role).isEqualTo(1);
            assertThat(count(reader, "child_identity")).as(role).isZero();
        }
    }

    @Test
    void hidesMeasurementsFromStorekeeperAndCostAdministratorAlone() {
        assertThat(count(network.staff(here.value(), "STOREKEEPER"), "body_size"))
                .isZero();
        assertThat(count(network.staff(here.value(), "COST_ADMINISTRATOR"), "body_size"))
                .isZero();
        assertThat(count(network.staff(here.value(), "AUDITOR"), "body_size")).isEqualTo(1);
    }

    @Test
    void showsAColleagueWithAGrantTheCaseAndNotTheName() {
        network.owner().sql("""
                insert into access_grant (id, staff_id, child_id, valid, reason)
                values (?, ?, ?, tstzrange('2000-01-01', null), 'test')
                """).params(ids.next(), stranger, child.value()).update();
        var seen = network.as(stranger, () -> patients.open(child, "course")).orElseThrow();
        assertThat(seen.who()).isInstanceOf(Who.Initialled.class);
        assertThat(network.as(stranger, () -> examinations.of(child)).sizes().facts())
                .hasSize(1);
    }

    @Test
    void letsAJobOfTheSiteMatchFilmsAndAJobOfAnotherNot() {
        assertThat(Callers.callAs(
                        new Caller.SystemAtSite(here.value(), "test"), () -> patients.match(here, "W-1", BORN)))
                .contains(child);
        assertThat(Callers.callAs(
                        new Caller.SystemAtSite(network.site(), "test"), () -> patients.match(here, "W-1", BORN)))
                .isEmpty();
    }

    @Test
    void writesDownEveryLook() {
        network.as(nurse, () -> patients.open(child, "course"));
        network.as(nurse, () -> patients.list(here, ChildOrder.NAME, 0));
        network.as(nurse, () -> patients.find(here, "Walled", Locale.ENGLISH));
        network.as(nurse, () -> examinations.of(child));
        var looks = network.owner()
                .sql("select distinct deed || ' ' || subject from access_entry where staff_id = ?"
                        + " and ? = any(children)")
                .params(nurse, child.value())
                .query(String.class)
                .list();
        assertThat(looks)
                .containsExactlyInAnyOrder("OPENED course", "LISTED children", "LISTED search", "OPENED examination");
    }

    private Long count(UUID staff, String table) {
        return network.as(staff, () -> jdbc.sql("select count(*) from " + table + " where site_id = ?")
                .param(here.value())
                .query(Long.class)
                .single());
    }
}
