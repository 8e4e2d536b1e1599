package org.espalier.access;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Timestamp;
import java.sql.Types;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

@Repository
class JdbcAccessLogRepository {

    private static final String ADD = """
            insert into access_entry (id, at, staff_id, site_id, deed, subject, children, film_id, film_hour,
                about_staff)
            values (:id, :at, :staff, :site, :deed, :subject, :children, :film, :hour, :about)
            on conflict do nothing""";

    private static final String SITES_OF_CALLER = "select unnest(my_sites())";

    /** One branch a site, so that each is read along its own index. */
    private static final String RECENT = """
            select e.at, e.site_id, s.name as who, e.deed, e.subject, a.name as about, e.children,
                e.xid < coalesce((select max(upto_xid) from access_seal), '0') as sealed
            from unnest(cast(:sites as uuid[])) as mine (site)
            cross join lateral (
                select * from access_entry
                where site_id = mine.site and (cast(:child as uuid) is null or children @> array[cast(:child as uuid)])
                order by at desc, id desc limit :limit) e
            left join staff s on s.id = e.staff_id
            left join staff a on a.id = e.about_staff
            order by e.at desc, e.id desc
            limit :limit""";

    private static final String OF_NO_SITE = """
            select e.at, e.site_id, s.name as who, e.deed, e.subject, a.name as about, e.children,
                e.xid < coalesce((select max(upto_xid) from access_seal), '0') as sealed
            from access_entry e
            left join staff s on s.id = e.staff_id
            left join staff a on a.id = e.about_staff
            where e.site_id is null
            order by e.at desc, e.id desc
            limit :limit""";
    private static final String CHILD_OF_NUMBER = "select site_id, child_id from child_of_number(:number)";
    private static final String NUMBERS = "select child_id, local_number from numbers_of_children(:children)";

    private static final String WHO_SAW =
            "select at, cared_at, staff_id, who, works_at, deed, subject, sealed from who_saw(:child, :limit)";
    private static final String CHECK_COLUMNS =
            "select at, seals, first_broken, rows_then, rows_now, rows_from, rows_until ";
    private static final String CHECK = CHECK_COLUMNS + "from check_access_seals(:id, :at)";
    private static final String LAST_CHECK = CHECK_COLUMNS + "from access_seal_check order by at desc, id desc limit 1";

    private final JdbcClient jdbc;

    JdbcAccessLogRepository(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    void add(AccessEntry entry) {
        var film = entry.film();
        var hour = film == null ? null : Timestamp.from(entry.at().truncatedTo(ChronoUnit.HOURS));
        jdbc.sql(ADD)
                .param("id", entry.id())
                .param("at", Timestamp.from(entry.at()))
                .param("staff", entry.staff() == null ? null : entry.staff().value())
                .param("site", entry.site() == null ? null : entry.site().value())
                .param("deed", entry.deed().name())
                .param("subject", entry.subject())
                .param("children", entry.children().toArray(UUID[]::new))
                .param("film", film)
                .param("hour", hour)
                .param("about", entry.about() == null ? null : entry.about().value())
                .update();
    }

    long seal(Instant at) {
        return jdbc.sql("select seal_access_log(:at)")
                .param("at", Timestamp.from(at))
                .query(Long.class)
                .single();
    }

    /** Computes every seal again and keeps the answer. */
    SealCheck check(UUID id, Instant at) {
        return jdbc.sql(CHECK)
                .param("id", id)
                .param("at", Timestamp.from(at))
                .query(JdbcAccessLogRepository::toCheck)
                .single();
    }

    Optional<SealCheck> lastCheck() {
        return jdbc.sql(LAST_CHECK).query(JdbcAccessLogRepository::toCheck).optional();
    }

    List<Look> whoSaw(UUID child, int limit) {
        return jdbc.sql(WHO_SAW)
                .param("child", child)
                .param("limit", limit)
                .query(JdbcAccessLogRepository::toLook)
                .list();
    }

    List<SiteId> sitesOfCaller() {
        return jdbc.sql(SITES_OF_CALLER).query(UUID.class).list().stream()
                .map(SiteId::new)
                .toList();
    }

    List<AccessLine> recent(Collection<SiteId> sites, @Nullable UUID child, int limit) {
        return jdbc.sql(RECENT)
                .param("sites", sites.stream().map(SiteId::value).toArray(UUID[]::new))
                .param("child", child, Types.OTHER)
                .param("limit", limit)
                .query(JdbcAccessLogRepository::toLine)
                .list();
    }

    List<AccessLine> ofNoSite(int limit) {
        return jdbc.sql(OF_NO_SITE)
                .param("limit", limit)
                .query(JdbcAccessLogRepository::toLine)
                .list();
    }

    /** The children with the number, at the sites the caller watches over. */
    List<ChildRef> childrenOfNumber(String number) {
        return jdbc.sql(CHILD_OF_NUMBER)
                .param("number", number)
                .query((row, index) -> new ChildRef(
                        new SiteId(row.getObject("site_id", UUID.class)), row.getObject("child_id", UUID.class)))
                .list();
    }

    Map<UUID, String> numbersOf(Collection<UUID> children) {
        var numbers = new HashMap<UUID, String>();
        jdbc.sql(NUMBERS).param("children", children.toArray(UUID[]::new)).query(row -> {
            var number = row.getString("local_number");
            if (number != null) {
                numbers.put(row.getObject("child_id", UUID.class), number);
            }
        });
        return numbers;
    }

    private static SealCheck toCheck(ResultSet row, int index) throws SQLException {
        long seal = row.getLong("first_broken");
        var broken = row.wasNull()
                ? null
                : new SealCheck.Broken(
                        seal,
                        row.getLong("rows_then"),
                        row.getLong("rows_now"),
                        instant(row, "rows_from"),
                        instant(row, "rows_until"));
        return new SealCheck(row.getTimestamp("at").toInstant(), row.getLong("seals"), broken);
    }

    private static Look toLook(ResultSet row, int index) throws SQLException {
        var staff = row.getObject("staff_id", UUID.class);
        var sites = (UUID[]) row.getArray("works_at").getArray();
        return new Look(
                row.getTimestamp("at").toInstant(),
                new SiteId(row.getObject("cared_at", UUID.class)),
                staff == null ? null : new StaffId(staff),
                row.getString("who"),
                Stream.of(sites).map(SiteId::new).toList(),
                AccessDeed.valueOf(row.getString("deed")),
                row.getString("subject"),
                row.getBoolean("sealed"));
    }

    private static @Nullable Instant instant(ResultSet row, String column) throws SQLException {
        var at = row.getTimestamp(column);
        return at == null ? null : at.toInstant();
    }

    private static AccessLine toLine(ResultSet row, int index) throws SQLException {
        var site = row.getObject("site_id", UUID.class);
        return new AccessLine(
                row.getTimestamp("at").toInstant(),
                site == null ? null : new SiteId(site),
                row.getString("who"),
                AccessDeed.valueOf(row.getString("deed")),
                row.getString("subject"),
                row.getString("about"),
                List.of((UUID[]) row.getArray("children").getArray()),
                row.getBoolean("sealed"));
    }
}
