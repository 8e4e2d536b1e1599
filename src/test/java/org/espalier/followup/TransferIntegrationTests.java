package org.espalier.followup;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import javax.sql.DataSource;
import org.awaitility.Awaitility;
import org.espalier.IntegrationTest;
import org.espalier.TestNetwork;
import org.espalier.access.SiteId;
import org.espalier.patient.ChildId;
import org.espalier.reading.TestReader;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.beans.factory.annotation.Qualifier;
import org.springframework.jdbc.core.simple.JdbcClient;

@IntegrationTest
class TransferIntegrationTests {

    @Autowired
    TransferService transfers;

    @Autowired
    TestNetwork network;

    @Autowired
    TestReader reader;

    @Autowired
    JdbcClient jdbc;

    @Autowired
    @Qualifier("ownerDataSource")
    DataSource owner;

    /** As a reading does: it holds on to the child first and moves the visit's dates then. */
    @Test
    void waitsForWhatIsBeingWrittenOfTheChild() throws Exception {
        meets(
                "select from child where id = '%s' for key share",
                "update visit set look_by = look_by where closed_at is null and child_id = '%s'");
    }

    /** As closing a visit does: it changes the visit first and adds its step, which holds on to the child, then. */
    @Test
    void waitsForWhatIsBeingDoneToTheVisit() throws Exception {
        meets(
                "update visit set look_by = look_by where closed_at is null and child_id = '%s'",
                "select from child where id = '%s' for key share");
    }

    /** One who works on the child while it is taken over; neither is thrown out. */
    private void meets(String first, String then) throws Exception {
        var surgeon = reader.surgeon();
        var child = reader.child(surgeon, LocalDate.of(2018, 3, 4)).value();
        var there = new SiteId(network.site());
        var nurse = network.staff(there.value(), "NURSE");
        var asked = surgeon.does(() -> transfers.ask(new ChildId(child), there, "moved to the coast"));
        try (var connection = owner.getConnection();
                var work = connection.createStatement()) {
            connection.setAutoCommit(false);
            work.execute(first.formatted(child));
            var accepted = CompletableFuture.supplyAsync(() -> network.as(nurse, () -> transfers.accept(asked.id())));
            Awaitility.await("who accepts waits")
                    .until(() -> accepted.isDone() || network.as(nurse, this::someoneWaits));
            assertThat(accepted).isNotDone();
            work.execute(then.formatted(child));
            connection.commit();
            assertThat(accepted.get(30, TimeUnit.SECONDS)).as("taken over").isPresent();
        }
    }

    /** Asked as the application, which sees what its own sessions wait for. */
    private boolean someoneWaits() {
        return jdbc.sql("""
                        select count(*) > 0 from pg_stat_activity where pid <> pg_backend_pid()
                            and query like '%accept_transfer%' and wait_event_type in ('Lock', 'Timeout')
                        """).query(Boolean.class).single();
    }
}
