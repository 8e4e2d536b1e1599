package org.espalier.cost;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.espalier.access.SiteId;
import org.espalier.patient.ChildId;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Accounts: by what pseudonym a hospital's costs know a child, and who pays. */
@Repository
class JdbcAccountRepository {

    private static final int TRIES = 3;

    private static final String OPEN = """
            insert into cost_account (child_id, recorded_site, site_id, pseudonym)
            select c.id, c.site_id, c.site_id, :pseudonym from child c where c.id = :child and c.site_id = :site
            on conflict do nothing
            """;
    private static final String COLUMNS = "select recorded_site, child_id, pseudonym, payer from cost_account ";
    private static final String FIND = COLUMNS + "where recorded_site = :site and child_id = :child";
    private static final String BY_PSEUDONYM = COLUMNS + "where recorded_site = :site and pseudonym = :pseudonym";
    private static final String ALL = COLUMNS + "where recorded_site = :site order by pseudonym";
    private static final String PAY =
            "update cost_account set payer = :payer where recorded_site = :site and child_id = :child";
    private static final String CHILDREN = "select id from child where site_id = :site order by id";

    private static final String IS_HERE = "select exists (select from child where id = :child and site_id = :site)";

    private final JdbcClient jdbc;

    JdbcAccountRepository(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /**
     * The child's account, opened with a pseudonym drawn by lot when there is none; empty when the caller reads none.
     */
    Optional<Account> open(SiteId site, ChildId child) {
        var found = find(site, child);
        for (int tries = 0; found.isEmpty() && tries < TRIES; tries++) {
            jdbc.sql(OPEN)
                    .param("pseudonym", Pseudonym.draw().text())
                    .param("child", child.value())
                    .param("site", site.value())
                    .update();
            found = find(site, child);
        }
        return found;
    }

    Optional<Account> find(SiteId site, ChildId child) {
        return jdbc.sql(FIND)
                .param("site", site.value())
                .param("child", child.value())
                .query(JdbcAccountRepository::account)
                .optional();
    }

    Optional<Account> find(SiteId site, Pseudonym pseudonym) {
        return jdbc.sql(BY_PSEUDONYM)
                .param("site", site.value())
                .param("pseudonym", pseudonym.text())
                .query(JdbcAccountRepository::account)
                .optional();
    }

    /** All of the hospital, by pseudonym. */
    List<Account> all(SiteId site) {
        return jdbc.sql(ALL)
                .param("site", site.value())
                .query(JdbcAccountRepository::account)
                .list();
    }

    void pay(Account account, String payer) {
        jdbc.sql(PAY)
                .param("payer", payer)
                .param("site", account.site().value())
                .param("child", account.child().value())
                .update();
    }

    /** Whether the hospital has care of the child. */
    boolean isHere(SiteId site, ChildId child) {
        return jdbc.sql(IS_HERE)
                .param("site", site.value())
                .param("child", child.value())
                .query(Boolean.class)
                .single();
    }

    /** The children the hospital has care of, for a job of the house. */
    List<ChildId> children(SiteId site) {
        return jdbc.sql(CHILDREN)
                .param("site", site.value())
                .query((row, number) -> new ChildId(row.getObject("id", UUID.class)))
                .list();
    }

    private static Account account(ResultSet row, int number) throws SQLException {
        return new Account(
                new SiteId(row.getObject("recorded_site", UUID.class)),
                new ChildId(row.getObject("child_id", UUID.class)),
                new Pseudonym(row.getString("pseudonym")),
                row.getString("payer"));
    }
}
