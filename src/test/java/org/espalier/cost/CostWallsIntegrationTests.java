package org.espalier.cost;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.sql.SQLException;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.espalier.IntegrationTest;
import org.espalier.TestNetwork;
import org.espalier.TestWorld;
import org.espalier.TestWorld.Hospital;
import org.espalier.patient.AffectedSides;
import org.espalier.patient.Diagnosis;
import org.espalier.patient.DiagnosisKind;
import org.espalier.patient.ExaminationService;
import org.espalier.patient.FactId;
import org.espalier.platform.Caller;
import org.espalier.platform.Callers;
import org.espalier.platform.Ids;
import org.espalier.reading.TestReader;
import org.espalier.science.quantity.Side;
import org.espalier.treatment.CareStep;
import org.espalier.treatment.TreatmentFactService;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.transaction.support.TransactionTemplate;

/** Who sees what of costs; that no charge changes; and that what is kept for speed is what would be told anew. */
@IntegrationTest
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class CostWallsIntegrationTests {

    @Autowired
    TestWorld world;

    @Autowired
    TestNetwork network;

    @Autowired
    TestCost costs;

    @Autowired
    TestReader reader;

    @Autowired
    CostReportService reports;

    @Autowired
    ChargeService charges;

    @Autowired
    EpisodeReader episodes;

    @Autowired
    JdbcEpisodeRepository kept;

    @Autowired
    TreatmentFactService facts;

    @Autowired
    ExaminationService examinations;

    @Autowired
    JdbcClient jdbc;

    @Autowired
    TransactionTemplate transactions;

    @Autowired
    Ids ids;

    Hospital hospital;

    @BeforeAll
    void aChildWhoseCareCosts() {
        hospital = world.hospital();
        costs.renew(hospital.site(), hospital.child());
    }

    @ParameterizedTest
    @ValueSource(strings = {"charge", "cost_account", "cost_episode", "cost_expected"})
    void hidesEveryRowFromOtherHospitalsAndRolesWithoutNeed(String table) {
        for (var role : List.of("SURGEON", "COST_ADMINISTRATOR")) {
            assertThat(count(network.staff(network.site(), role), table))
                    .as(role)
                    .isZero();
        }
        for (var role : List.of("STOREKEEPER", "PRIVACY_OFFICER", "AUDITOR", "ARCHIVE")) {
            assertThat(count(network.staff(hospital.site().value(), role), table))
                    .as(role)
                    .isZero();
        }
        assertThat(count(administrator(), table)).isPositive();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"child_identity", "procedure_session", "procedure_act", "treatment_plan", "diagnosis", "reading"
            })
    void aCostAdministratorReadsNoNameNoTreatmentAndNoDiagnosis(String table) {
        assertThat(count(administrator(), table)).isZero();
    }

    @ParameterizedTest
    @ValueSource(strings = {"charge", "cost_account", "cost_tariff", "cost_allowance", "cost_episode", "cost_expected"})
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
                "update charge set amount = 1",
                "delete from charge",
                "update cost_tariff set price = 1",
                "delete from cost_tariff",
                "update cost_account set pseudonym = 'AAAA-BBBB'",
                "delete from cost_account",
                "update cost_allowance set quantity = 1",
                "insert into cost_episode select * from cost_episode",
                "delete from cost_expected"
            })
    void letsNobodyChangeWhatWasCharged(String statement) {
        assertThatThrownBy(() ->
                        network.as(administrator(), () -> jdbc.sql(statement).update()))
                .rootCause()
                .isInstanceOfSatisfying(
                        SQLException.class, e -> assertThat(e.getSQLState()).isEqualTo("42501"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"update charge set quantity = 2", "delete from charge"})
    void evenTheOwnerChangesNoCharge(String statement) {
        assertThatThrownBy(() -> network.owner().sql(statement).update())
                .rootCause()
                .isInstanceOfSatisfying(
                        SQLException.class, e -> assertThat(e.getSQLState()).isEqualTo("ES002"));
    }

    @Test
    void twoTariffsNeverHoldForTheSameDay() {
        assertThatThrownBy(() -> network.owner()
                        .sql("""
                                insert into cost_tariff (id, site_id, item, valid, price, currency, tax, source,
                                    recorded_at)
                                values (uuidv7(), :site, 'VISIT', '[2025-01-01,2025-01-02)', 1, 'EUR', 'NONE',
                                    'by hand', now())
                                """)
                        .param("site", hospital.site().value())
                        .update())
                .rootCause()
                .isInstanceOfSatisfying(
                        SQLException.class, e -> assertThat(e.getSQLState()).isEqualTo("23P01"));
    }

    @Test
    void whatIsKeptOfEpisodesIsWhatIsToldAnew() {
        var site = hospital.site();
        var child = hospital.child();
        record Both(List<Episode> kept, List<Episode> anew, List<Expected> expected, List<Expected> expectedAnew) {}
        var both = asJob(() ->
                new Both(kept.of(site, child), episodes.of(child), kept.expected(site), episodes.expected(child)));
        assertThat(both.kept()).isNotEmpty().isEqualTo(both.anew());
        assertThat(both.expected()).isNotEmpty().containsAll(both.expectedAnew());
    }

    @Test
    void anEpisodeEndsWithCareAndCountsItsRepeats() {
        network.as(
                hospital.surgeon(),
                () -> facts.record(
                        hospital.child(),
                        new FactId(ids.next()),
                        new CareStep(
                                LocalDate.of(2026, 1, 15),
                                Side.LEFT,
                                CareStep.Step.ENDED,
                                CareStep.EndReason.LEFT_NETWORK,
                                null)));
        costs.renew(hospital.site(), hospital.child());
        var told = network.as(administrator(), () -> reports.episodes(hospital.site())).stream()
                .map(one -> one.cost().episode())
                .filter(episode ->
                        episode.side() == Side.LEFT && episode.child().equals(hospital.child()))
                .toList();
        assertThat(told).singleElement().satisfies(episode -> {
            assertThat(episode.ended()).contains(LocalDate.of(2026, 1, 15));
            assertThat(episode.elsewhere()).isTrue();
        });
    }

    @Test
    void aLimbThatIsOnlyTheMatterIsWatched() {
        var surgeon = reader.surgeon();
        var child = reader.child(surgeon, LocalDate.of(2020, 2, 2));
        surgeon.does(() -> {
            var bow = new Diagnosis(
                    LocalDate.of(2026, 1, 5), DiagnosisKind.PHYSIOLOGICAL_BOW, AffectedSides.LEFT, null, null, null);
            examinations.record(child, new FactId(ids.next()), bow);
            return bow;
        });
        costs.administrator(surgeon.site());
        costs.renew(surgeon.site(), child);
        var account = costs.account(surgeon.staff(), child);
        assertThat(surgeon.does(() -> reports.child(account)).limbs())
                .singleElement()
                .satisfies(limb -> {
                    assertThat(limb.episode().side()).isEqualTo(Side.LEFT);
                    assertThat(limb.episode().pathway()).isEqualTo(Pathway.WATCH);
                    assertThat(limb.episode().diagnosis()).isEqualTo(DiagnosisGroup.PHYSIOLOGICAL);
                });
    }

    @Test
    void aLookAtAnAccountIsWrittenDown() {
        var account = costs.account(hospital.surgeon(), hospital.child());
        var administrator = administrator();
        network.as(administrator, () -> charges.ofAccount(account));
        assertThat(network.owner()
                        .sql("select count(*) from access_entry where staff_id = ? and subject = 'costs'"
                                + " and ? = any(children)")
                        .params(administrator, hospital.child().value())
                        .query(Long.class)
                        .single())
                .isEqualTo(1);
    }

    private UUID administrator() {
        return network.staff(hospital.site().value(), "COST_ADMINISTRATOR");
    }

    private long count(UUID staff, String table) {
        return Optional.ofNullable(network.as(staff, () -> jdbc.sql("select count(*) from " + table)
                        .query(Long.class)
                        .single()))
                .orElseThrow();
    }

    private <T> T asJob(java.util.function.Supplier<T> work) {
        return Callers.callAs(
                new Caller.SystemAtSite(hospital.site().value(), "test"),
                () -> java.util.Objects.requireNonNull(transactions.execute(status -> work.get())));
    }
}
