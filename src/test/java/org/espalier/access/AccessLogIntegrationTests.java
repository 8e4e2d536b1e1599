package org.espalier.access;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.time.Clock;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.List;
import java.util.UUID;
import org.espalier.IntegrationTest;
import org.espalier.TestNetwork;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;

@IntegrationTest
class AccessLogIntegrationTests {

    @Autowired
    AccessLog log;

    @Autowired
    AccessLogService service;

    @Autowired
    JdbcClient jdbc;

    @Autowired
    TestNetwork network;

    @Autowired
    Clock clock;

    private List<String> deedsSeenBy(UUID staff) {
        return network.as(staff, () -> jdbc.sql("select deed || ' ' || subject from access_entry order by xid, id")
                .query(String.class)
                .list());
    }

    private void opens(UUID staff, ChildRef child) {
        network.as(staff, () -> {
            log.opened(child, "course");
            return child;
        });
    }

    @Test
    void showsThePrivacyOfficerOfTheSiteAloneWhoLooked() {
        var here = network.site();
        var there = network.site();
        var nurse = network.staff(here, "NURSE");
        opens(nurse, new ChildRef(new SiteId(here), UUID.randomUUID()));
        assertThat(deedsSeenBy(network.staff(here, "PRIVACY_OFFICER"))).containsExactly("OPENED course");
        assertThat(deedsSeenBy(network.staff(there, "PRIVACY_OFFICER"))).isEmpty();
        assertThat(deedsSeenBy(nurse)).isEmpty();
    }

    @Test
    void writesAListOncePerSiteWithItsChildren() {
        var here = network.site();
        var there = network.site();
        var surgeon = network.staff(here, "SURGEON", "PRIVACY_OFFICER");
        network.member(surgeon, there, "SURGEON");
        var mine = new ChildRef(new SiteId(here), UUID.randomUUID());
        network.as(surgeon, () -> {
            log.listed("search", List.of(mine, new ChildRef(new SiteId(there), UUID.randomUUID())));
            return mine;
        });
        var children = network.as(surgeon, () -> jdbc.sql("select unnest(children) from access_entry")
                .query(UUID.class)
                .list());
        assertThat(children).containsExactly(mine.child());
    }

    @Test
    void writesAFilmOnceAnHour() {
        var site = network.site();
        var officer = network.staff(site, "PRIVACY_OFFICER", "RADIOGRAPHER");
        var child = new ChildRef(new SiteId(site), UUID.randomUUID());
        var film = UUID.randomUUID();
        for (int tile = 0; tile < 3; tile++) {
            network.as(officer, () -> {
                log.film(child, film);
                return film;
            });
        }
        assertThat(deedsSeenBy(officer)).hasSizeBetween(1, 2).containsOnly("FILM film");
    }

    @Test
    void keepsARefusalAlthoughTheWorkIsRolledBack() {
        var site = network.site();
        var officer = network.staff(site, "PRIVACY_OFFICER");
        assertThatThrownBy(() -> network.as(officer, () -> {
                    log.denied("FilmService.receive");
                    throw new IllegalStateException("refused");
                }))
                .hasMessage("refused");
        assertThat(deedsSeenBy(officer)).containsExactly("DENIED FilmService.receive");
    }

    @Test
    void refusesAnEntryInSomebodyElsesName() {
        var site = network.site();
        var nurse = network.staff(site, "NURSE");
        var other = network.staff(site, "NURSE");
        assertThatThrownBy(() -> network.as(
                        nurse, () -> jdbc.sql("insert into access_entry (id, at, staff_id, site_id, deed, subject)"
                                        + " values (gen_random_uuid(), current_timestamp, ?, ?, 'DENIED', 'x')")
                                .params(other, site)
                                .update()))
                .rootCause()
                .hasMessageContaining("row-level security");
    }

    @Test
    void findsARowThatWasTamperedWith() {
        var site = network.site();
        opens(network.staff(site, "NURSE"), new ChildRef(new SiteId(site), UUID.randomUUID()));
        opens(network.staff(site, "NURSE"), new ChildRef(new SiteId(site), UUID.randomUUID()));
        log.seal();
        assertThat(log.checkSeals().broken()).isNull();
        var owner = network.owner();
        owner.sql("alter table access_entry disable trigger access_entry_stays").update();
        owner.sql("update access_entry set subject = 'search' where site_id = ?")
                .param(site)
                .update();
        var broken = log.checkSeals().broken();
        assertThat(broken).isNotNull();
        assertThat(broken.rowsNow()).isEqualTo(broken.rowsThen());
        assertThat(broken.from()).isBeforeOrEqualTo(broken.until());
        assertThat(network.as(
                        network.operator(),
                        () -> service.lastCheck().orElseThrow().broken()))
                .isEqualTo(broken);
        owner.sql("update access_entry set subject = 'course' where site_id = ?")
                .param(site)
                .update();
        assertThat(log.checkSeals().broken()).isNull();
        owner.sql("alter table access_entry enable trigger access_entry_stays").update();
        assertThatThrownBy(() -> owner.sql("delete from access_entry where site_id = ?")
                        .param(site)
                        .update())
                .rootCause()
                .hasMessageContaining("only ever added to");
    }

    /** The jobs stand in the table that all nodes share: one of them seals, one checks at night. */
    @Test
    void areSealedAllTheTimeAndCheckedEachNight() {
        var due = network.owner()
                .sql("select task_name, execution_time from scheduled_tasks where task_name like '%-access-log'")
                .query((row, number) -> java.util.Map.entry(
                        row.getString("task_name"),
                        row.getTimestamp("execution_time").toInstant()))
                .list();
        assertThat(due)
                .extracting(java.util.Map.Entry::getKey)
                .containsExactlyInAnyOrder("seal-access-log", "check-access-log");
        assertThat(due)
                .filteredOn(one -> one.getKey().equals("check-access-log"))
                .extracting(one -> one.getValue().atZone(ZoneId.systemDefault()).toLocalTime())
                .containsExactly(LocalTime.of(2, 45));
    }

    @Test
    void sealsAsSha256OverTheSealBeforeAndTheRowsSince() throws Exception {
        var site = network.site();
        var nurse = network.staff(site, "NURSE");
        log.seal();
        opens(nurse, new ChildRef(new SiteId(site), UUID.randomUUID()));
        log.seal();
        var seals = network.owner()
                .sql("select hash from access_seal order by n desc limit 2")
                .query((row, number) -> row.getBytes(1))
                .list();
        var bytes = network.owner()
                .sql("select access_entry_bytes(e) from access_entry e where staff_id = ?")
                .param(nurse)
                .query((row, number) -> row.getBytes(1))
                .single();
        var sha = MessageDigest.getInstance("SHA-256");
        var rows = sha.digest(bytes);
        sha.update(seals.get(1));
        assertThat(sha.digest(rows)).isEqualTo(seals.get(0));
    }

    @Test
    void theStatementOfTheDocumentsRecomputesEverySealWithoutAFunctionOfTheHouse() throws IOException {
        var site = network.site();
        opens(network.staff(site, "NURSE"), new ChildRef(new SiteId(site), UUID.randomUUID()));
        log.seal();
        var text = Files.readString(Path.of("docs/security.md"));
        var sql = text.replaceFirst("(?s).*```sql\n(.*?)```.*", "$1");
        assertThat(sql).doesNotContain("access_entry_bytes").hasLineCount(10);
        var seals = network.owner()
                .sql("select count(*) from access_seal")
                .query(Long.class)
                .single();
        assertThat(recomputed(sql)).hasSize(seals.intValue()).containsOnly(true);

        var owner = network.owner();
        owner.sql("alter table access_entry disable trigger access_entry_stays").update();
        owner.sql("update access_entry set at = at + interval '1 second' where site_id = ?")
                .param(site)
                .update();
        assertThat(recomputed(sql)).contains(false);
        owner.sql("update access_entry set at = at - interval '1 second' where site_id = ?")
                .param(site)
                .update();
        owner.sql("alter table access_entry enable trigger access_entry_stays").update();
        assertThat(recomputed(sql)).containsOnly(true);
    }

    private List<Boolean> recomputed(String sql) {
        return network.owner()
                .sql(sql)
                .query((row, number) -> row.getBoolean("holds"))
                .list();
    }
}
