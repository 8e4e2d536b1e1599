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
import org.espalier.reading.TestReader;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.beans.factory.annotation.Qualifier;

@IntegrationTest
class TransferIntegrationTests {

    @Autowired
    TransferService transfers;

    @Autowired
    TestNetwork network;

    @Autowired
    TestReader reader;

    @Autowired
    @Qualifier("ownerDataSource")
    DataSource owner;

    /** As a reading does: it holds on to the child first and moves the visit's dates then. */
    @Test
    void waitsForWhatIsBeingWrittenOfTheChildAndThrowsNobodyOut() throws Exception {
        var surgeon = reader.surgeon();
        var child = reader.child(surgeon, LocalDate.of(2018, 3, 4));
        var there = new SiteId(network.site());
        var nurse = network.staff(there.value(), "NURSE");
        var asked = surgeon.does(() -> transfers.ask(child, there, "moved to the coast"));
        try (var connection = owner.getConnection();
                var work = connection.createStatement()) {
            connection.setAutoCommit(false);
            work.execute("select from child where id = '" + child.value() + "' for key share");
            var accepted = CompletableFuture.supplyAsync(() -> network.as(nurse, () -> transfers.accept(asked.id())));
            Awaitility.await("who accepts waits")
                    .until(() -> network.count("select count(*) from pg_locks where not granted") > 0);
            int moved = work.executeUpdate("update visit set look_by = look_by where closed_at is null and child_id = '"
                    + child.value() + "'");
            connection.commit();
            assertThat(moved).as("the open visit").isOne();
            assertThat(accepted.get(30, TimeUnit.SECONDS)).as("taken over").isPresent();
        }
    }
}
