package org.espalier.outcomes;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.sql.SQLException;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Supplier;
import org.espalier.IntegrationTest;
import org.espalier.TestNetwork;
import org.espalier.access.SiteId;
import org.espalier.cost.Cell;
import org.espalier.film.TestDoor.Sender;
import org.espalier.outcomes.TestOutcomes.Film;
import org.espalier.patient.ChildId;
import org.espalier.platform.Caller;
import org.espalier.platform.Callers;
import org.espalier.reading.TestReader;
import org.espalier.treatment.ProcedureKind;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.transaction.support.TransactionTemplate;

/** What crosses the walls: how many and never who, and no few; and that what is kept is what is told anew. */
@IntegrationTest
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class OutcomeWallsIntegrationTests {

    static final Span SPAN = new Span(2021, 2022);

    @Autowired
    TestReader reader;

    @Autowired
    TestNetwork network;

    @Autowired
    TestOutcomes courses;

    @Autowired
    OutcomeService outcomes;

    @Autowired
    OutcomeRenewal renewal;

    @Autowired
    JdbcOutcomeRepository plates;

    @Autowired
    JdbcJudgedRepository judged;

    @Autowired
    JdbcClient jdbc;

    @Autowired
    TransactionTemplate transactions;

    Sender surgeon;
    ChildId child;
    UUID other;

    @BeforeAll
    void twoHospitals() {
        surgeon = reader.surgeon();
        child = courses.child(surgeon, Film.of(2021, 9, 8), Film.of(2022, 2, 14.5));
        var implant = courses.plate(surgeon, child, TestOutcomes.PLATE, false);
        courses.act(surgeon, child, LocalDate.of(2022, 3, 1), ProcedureKind.PLATE_OUT, implant, false);
        courses.foretold(surgeon, child, LocalDate.of(2022, 2, 1), 0.1, 82, 85, 86, 87, 90);
        courses.renew(surgeon.site());
        other = network.site();
        courses.crowd(other, "STRAIGHT", 30);
        courses.crowd(other, "OVERSHOT", 7);
        courses.crowd(other, "FAILED", 5);
    }

    @ParameterizedTest
    @ValueSource(strings = {"outcome_plate", "outcome_forecast"})
    void hidesEveryRowFromOtherHospitalsAndRolesWithoutNeed(String table) {
        for (var role : List.of("SURGEON", "AUDITOR")) {
            assertThat(count(network.staff(network.site(), role), table))
                    .as(role)
                    .isZero();
            assertThat(count(network.staff(surgeon.site().value(), role), table))
                    .as(role)
                    .isPositive();
        }
        for (var role : List.of("NURSE", "RADIOGRAPHER", "STOREKEEPER", "COST_ADMINISTRATOR", "PRIVACY_OFFICER")) {
            assertThat(count(network.staff(surgeon.site().value(), role), table))
                    .as(role)
                    .isZero();
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "insert into outcome_plate select * from outcome_plate",
                "update outcome_plate set came = 'STRAIGHT'",
                "delete from outcome_forecast"
            })
    void letsNobodyChangeWhatIsTold(String statement) {
        assertThatThrownBy(() ->
                        network.as(surgeon.staff(), () -> jdbc.sql(statement).update()))
                .rootCause()
                .isInstanceOfSatisfying(
                        SQLException.class, e -> assertThat(e.getSQLState()).isEqualTo("42501"));
    }

    @Test
    void anotherHospitalsPlatesAreNeverListed() {
        var stranger = network.staff(other, "SURGEON", "AUDITOR");
        assertThat(network.as(stranger, () -> outcomes.plates(surgeon.site(), SPAN)))
                .isEmpty();
        assertThat(network.as(stranger, () -> outcomes.results(surgeon.site(), SPAN))
                        .plates())
                .isEmpty();
        assertThat(network.as(stranger, () -> outcomes.honesty(surgeon.site())).judged())
                .isEmpty();
    }

    @Test
    void countsOfEveryHospitalAreToldToSurgeonsAndAuditorsAlone() {
        var nurse = network.staff(other, "NURSE");
        assertThat(network.as(nurse, () -> plates.counts(SPAN))).isEmpty();
        var auditor = network.staff(network.site(), "AUDITOR");
        assertThat(network.as(auditor, () -> plates.counts(SPAN)))
                .contains(new JdbcOutcomeRepository.Count(new SiteId(other), "CAME", "STRAIGHT", 30));
    }

    @Test
    void tellsOfAnotherHospitalNoCountBelowFive() {
        var mine = of(surgeon.staff(), other);
        assertThat(mine.mine()).isFalse();
        assertThat(mine.came())
                .containsEntry(Measure.STRAIGHT, new Cell.Told(30))
                .containsEntry(Measure.FAILED, new Cell.Told(5));
        assertThat(mine.all()).isEqualTo(new Cell.Told(42));
        assertThat(mine.mix().orElseThrow().ages()).containsEntry(AgeBand.FROM_6, 42);
        var few = of(network.staff(other, "SURGEON"), surgeon.site().value());
        assertThat(few.came().values()).contains(new Cell.Hidden()).doesNotContain(new Cell.Told(1));
        assertThat(few.all()).isEqualTo(new Cell.Hidden());
        assertThat(few.mix()).isEmpty();
        assertThat(of(surgeon.staff(), surgeon.site().value()).came())
                .containsEntry(Measure.STRAIGHT, new Cell.Told(1));
    }

    /** Two that failed could be reckoned from the rest, were only they hidden. */
    @Test
    void hidesWhatASmallCountCouldBeReckonedFrom() {
        var site = network.site();
        courses.crowd(site, "STRAIGHT", 20);
        courses.crowd(site, "OVERSHOT", 6);
        courses.crowd(site, "FAILED", 2);
        var told = of(surgeon.staff(), site);
        assertThat(told.came())
                .containsEntry(Measure.FAILED, new Cell.Hidden())
                .containsEntry(Measure.STRAIGHT, new Cell.Told(20));
        assertThat(told.ended(Measure.STRAIGHT)).isEmpty();
        assertThat(told.came()).containsEntry(Measure.OVERSHOT, new Cell.Hidden());
        assertThat(told.all()).isEqualTo(new Cell.Told(28));
    }

    @Test
    void whatIsKeptIsWhatIsToldAnew() {
        var told = asJob(() -> renewal.tell(surgeon.site(), child));
        assertThat(told.plates()).isNotEmpty().isEqualTo(asJob(() -> plates.of(surgeon.site(), child)));
        assertThat(told.forecasts()).isNotEmpty().isEqualTo(asJob(() -> judged.of(surgeon.site(), child)));
        var before = asJob(() -> plates.of(surgeon.site(), child));
        network.owner()
                .sql("update outcome_plate set came = 'FAILED', past_deg = 9 where child_id = ?")
                .param(child.value())
                .update();
        courses.renew(surgeon.site());
        assertThat(asJob(() -> plates.of(surgeon.site(), child))).isEqualTo(before);
    }

    @Test
    void aListOfPlatesIsWrittenDown() {
        var auditor = network.staff(surgeon.site().value(), "AUDITOR");
        assertThat(network.as(auditor, () -> outcomes.plates(surgeon.site(), SPAN)))
                .isNotEmpty();
        assertThat(network.owner()
                        .sql("select count(*) from access_entry where staff_id = ? and subject = 'outcomes'"
                                + " and ? = any(children)")
                        .params(auditor, child.value())
                        .query(Long.class)
                        .single())
                .isEqualTo(1);
    }

    private HospitalCounts of(UUID reader, UUID site) {
        return Objects.requireNonNull(network.as(reader, () -> outcomes.compared(Measure.STRAIGHT, SPAN)))
                .hospitals()
                .stream()
                .filter(one -> one.site().value().equals(site))
                .findFirst()
                .orElseThrow();
    }

    private long count(UUID staff, String table) {
        return Optional.ofNullable(network.as(staff, () -> jdbc.sql("select count(*) from " + table)
                        .query(Long.class)
                        .single()))
                .orElseThrow();
    }

    private <T> T asJob(Supplier<T> work) {
        return Callers.callAs(
                new Caller.SystemAtSite(surgeon.site().value(), "test"),
                () -> Objects.requireNonNull(transactions.execute(status -> work.get())));
    }
}
