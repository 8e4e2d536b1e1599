package org.espalier.treatment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.sql.SQLException;
import java.util.UUID;
import org.espalier.IntegrationTest;
import org.espalier.TestNetwork;
import org.espalier.TestWorld;
import org.espalier.access.EveryRow;
import org.espalier.platform.Ids;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.transaction.support.TransactionTemplate;

/** What staff of another hospital, and of this one without need, get of a treatment: nothing; and no fact changes. */
@IntegrationTest
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class TreatmentWallsIntegrationTests {

    @Autowired
    TestWorld world;

    @Autowired
    TestNetwork network;

    @Autowired
    JdbcClient jdbc;

    @Autowired
    TransactionTemplate transactions;

    @Autowired
    Ids ids;

    TestWorld.Hospital hospital;

    @BeforeAll
    void aTreatedChild() {
        hospital = world.hospital();
        var other = world.hospital();
        EveryRow.add(network, other.site().value(), other.child().value(), other.surgeon());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"procedure_session", "procedure_act", "side_reversal", "treatment_plan", "treatment_target"})
    void hidesEveryRowFromOtherHospitalsAndRolesWithoutNeed(String table) {
        assertThat(count(network.staff(network.site(), "SURGEON"), table)).isZero();
        for (var role : new String[] {"STOREKEEPER", "COST_ADMINISTRATOR", "PRIVACY_OFFICER"}) {
            assertThat(count(network.staff(hospital.site().value(), role), table))
                    .as(role)
                    .isZero();
        }
        assertThat(count(network.staff(hospital.site().value(), "AUDITOR"), table))
                .isPositive();
    }

    @ParameterizedTest
    @ValueSource(strings = {"procedure_session", "implant_finding", "physis_maturity", "care_step", "theatre_check"})
    void refusesEveryRowWhenNobodyAsks(String table) {
        assertThatThrownBy(() -> transactions.execute(status -> jdbc.sql("select count(*) from " + table)
                        .query(Long.class)
                        .single()))
                .rootCause()
                .isInstanceOfSatisfying(
                        SQLException.class, e -> assertThat(e.getSQLState()).isEqualTo("ES001"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "update procedure_act set implants = 'x'",
                "delete from procedure_session",
                "update treatment_plan set side = 'LEFT'",
                "update treatment_target set angle_deg = 90",
                "delete from side_reversal"
            })
    void letsNobodyChangeAFact(String statement) {
        assertThatThrownBy(() ->
                        network.as(hospital.surgeon(), () -> jdbc.sql(statement).update()))
                .rootCause()
                .isInstanceOfSatisfying(
                        SQLException.class, e -> assertThat(e.getSQLState()).isEqualTo("42501"));
        assertThatThrownBy(() -> network.owner().sql(statement).update())
                .rootCause()
                .isInstanceOfSatisfying(
                        SQLException.class, e -> assertThat(e.getSQLState()).isEqualTo("ES002"));
    }

    @Test
    void letsNobodySpeakForTheSecondPersonEvenBySql() {
        var colleague = network.staff(hospital.site().value(), "SURGEON");
        assertThatThrownBy(() -> network.as(hospital.surgeon(), () -> consent(colleague)))
                .rootCause()
                .isInstanceOfSatisfying(
                        SQLException.class, e -> assertThat(e.getSQLState()).isEqualTo("42501"));
        assertThatThrownBy(() -> network.as(hospital.surgeon(), () -> consent(hospital.surgeon())))
                .rootCause()
                .isInstanceOfSatisfying(
                        SQLException.class, e -> assertThat(e.getSQLState()).isEqualTo("23514"));
        assertThat(network.as(colleague, () -> consent(colleague))).isEqualTo(1);
    }

    private int consent(UUID by) {
        return jdbc.sql("""
                insert into side_reversal_consent (reversal_id, site_id, recorded_site, child_id, asked_by,
                    consented_by,
                    consented_at, by_password)
                select id, site_id, site_id, child_id, asked_by, :by, asked_at, false from side_reversal
                where child_id = :child
                """)
                .param("by", by)
                .param("child", hospital.child().value())
                .update();
    }

    private Long count(UUID staff, String table) {
        return network.as(staff, () -> jdbc.sql("select count(*) from " + table)
                .query(Long.class)
                .single());
    }
}
