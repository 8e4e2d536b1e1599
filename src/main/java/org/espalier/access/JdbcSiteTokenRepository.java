package org.espalier.access;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Timestamp;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

@Repository
class JdbcSiteTokenRepository {

    private static final String ALL =
            "select id, site_id, label, scopes, issued_at, revoked_at from site_token order by issued_at desc, id desc";
    private static final String ADD_ARCHIVE =
            "insert into staff (id, login, name, kind) values (:id, :login, :name, 'archive')";
    private static final String ADD_MEMBERSHIP = """
            insert into membership (staff_id, site_id, role, valid)
            values (:id, :site, 'ARCHIVE', daterange(current_date, null))""";
    private static final String ADD = """
            insert into site_token (id, staff_id, site_id, label, scopes, secret_sha256, issued_at, issued_by)
            values (:id, :archive, :site, :label, :scopes, :hash, :at, current_staff())""";
    private static final String REVOKE = """
            update site_token set revoked_at = :at where id = :id and revoked_at is null returning staff_id, site_id""";

    private final JdbcClient jdbc;

    JdbcSiteTokenRepository(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** An archive and its site. */
    record Archive(StaffId staff, SiteId site) {}

    List<SiteToken> all() {
        return jdbc.sql(ALL).query(JdbcSiteTokenRepository::toToken).list();
    }

    void addArchive(StaffId archive, SiteId site, String label) {
        jdbc.sql(ADD_ARCHIVE)
                .param("id", archive.value())
                .param("login", "archive-" + archive.value())
                .param("name", label)
                .update();
        jdbc.sql(ADD_MEMBERSHIP)
                .param("id", archive.value())
                .param("site", site.value())
                .update();
    }

    void add(SiteToken token, StaffId archive, SiteTokenSecret secret) {
        jdbc.sql(ADD)
                .param("id", token.id())
                .param("archive", archive.value())
                .param("site", token.site().value())
                .param("label", token.label())
                .param("scopes", token.scopes().stream().map(TokenScope::name).toArray(String[]::new))
                .param("hash", secret.sha256())
                .param("at", Timestamp.from(token.issued()))
                .update();
    }

    Optional<Archive> revoke(UUID id, Instant at) {
        return jdbc.sql(REVOKE)
                .param("id", id)
                .param("at", Timestamp.from(at))
                .query((row, number) -> new Archive(
                        new StaffId(row.getObject("staff_id", UUID.class)),
                        new SiteId(row.getObject("site_id", UUID.class))))
                .optional();
    }

    private static SiteToken toToken(ResultSet row, int number) throws SQLException {
        var revoked = row.getTimestamp("revoked_at");
        return new SiteToken(
                row.getObject("id", UUID.class),
                new SiteId(row.getObject("site_id", UUID.class)),
                row.getString("label"),
                toScopes(row),
                row.getTimestamp("issued_at").toInstant(),
                revoked == null ? null : revoked.toInstant());
    }

    private static Set<TokenScope> toScopes(ResultSet row) throws SQLException {
        return Stream.of((String[]) row.getArray("scopes").getArray())
                .map(TokenScope::valueOf)
                .collect(Collectors.toUnmodifiableSet());
    }
}
