package org.espalier.platform;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.sql.SQLException;
import java.util.UUID;
import org.espalier.IntegrationTest;
import org.espalier.TestNetwork;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.transaction.support.TransactionTemplate;

@IntegrationTest
class CallerContextIntegrationTests {

    @Autowired
    JdbcClient jdbc;

    @Autowired
    TransactionTemplate transactions;

    @Autowired
    TestNetwork network;

    @Test
    void runsAsTheApplicationsRoleWhichOwnsNothingAndPassesNoWall() {
        var role = jdbc.sql("select rolname, rolsuper, rolbypassrls from pg_roles where rolname = current_user")
                .query()
                .singleRow();
        assertThat(role)
                .containsEntry("rolname", "espalier_app")
                .containsEntry("rolsuper", false)
                .containsEntry("rolbypassrls", false);
        assertThat(jdbc.sql("select count(*) from pg_class where relowner = 'espalier_app'::regrole")
                        .query(Long.class)
                        .single())
                .isZero();
    }

    @Test
    void refusesEveryRowWhenNobodyAsks() {
        assertThatThrownBy(() -> transactions.execute(status ->
                        jdbc.sql("select id from site").query(UUID.class).list()))
                .rootCause()
                .isInstanceOfSatisfying(
                        SQLException.class, e -> assertThat(e.getSQLState()).isEqualTo("ES001"));
    }

    @Test
    void speaksForTheStaffOfTheTransactionAndForgetsAfterwards() {
        var site = network.site();
        var nurse = network.staff(site, "NURSE");
        var sites = network.as(
                nurse,
                () -> jdbc.sql("select unnest(my_sites())").query(UUID.class).list());
        assertThat(sites).containsExactly(site);
        assertThat(transactions.<Boolean>execute(
                        status -> jdbc.sql("select coalesce(current_setting('espalier.staff', true), '') = ''")
                                .query(Boolean.class)
                                .single()))
                .isTrue();
    }

    @Test
    void knowsTheRolesOfStaffAtEachSite() {
        var here = network.site();
        var there = network.site();
        var person = network.staff(here, "SURGEON");
        network.member(person, there, "AUDITOR");
        var surgeonAt = network.as(person, () -> jdbc.sql("select unnest(my_sites_as('SURGEON', 'NURSE'))")
                .query(UUID.class)
                .list());
        assertThat(surgeonAt).containsExactly(here);
    }

    @Test
    void letsAJobSpeakForItsSiteAlone() {
        var site = network.site();
        network.site();
        var seen = Callers.callAs(
                new Caller.SystemAtSite(site, "test"),
                () -> transactions.execute(status ->
                        jdbc.sql("select id from site").query(UUID.class).list()));
        assertThat(seen).containsExactly(site);
    }

    @Test
    void refusesTheApplicationThatPosesAsTheSystem() {
        assertThatThrownBy(() -> transactions.execute(status -> {
                    jdbc.sql("select set_config('espalier.staff', 'system', true)")
                            .query()
                            .singleRow();
                    return jdbc.sql("select my_sites()").query().singleRow();
                }))
                .rootCause()
                .isInstanceOfSatisfying(
                        SQLException.class, e -> assertThat(e.getSQLState()).isEqualTo("ES001"));
    }
}
