package org.espalier.cost;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.espalier.access.SiteId;
import org.springframework.jdbc.core.simple.JdbcClient;

/**
 * Rows of a hospital of which each holds from its first day until the next one's: what was set is never changed,
 * another ends it, or takes the place of one of the same first day.
 */
final class JdbcSuccession {

    private static final String LOCK = "select pg_advisory_xact_lock(hashtextextended(cast(:site as text), 830))";

    private final JdbcClient jdbc;
    private final String replace;
    private final String end;
    private final String next;

    /** @param same the condition by which rows follow each other, over the parameters of a key */
    JdbcSuccession(JdbcClient jdbc, String table, String same) {
        this.jdbc = jdbc;
        var standing = " where site_id = :site and " + same + " and replaced = '00000000-0000-0000-0000-000000000000'";
        replace = "update " + table + " set replaced = id" + standing + " and lower(valid) = :from";
        end = "update " + table + " set valid = daterange(lower(valid), :from)" + standing
                + " and valid @> cast(:from as date)";
        next = "select min(lower(valid)) from " + table + standing + " and lower(valid) > :from";
    }

    /** Makes room for a row from the day on, and says from which day the next one holds. */
    Optional<LocalDate> makeRoom(SiteId site, Map<String, String> key, LocalDate from) {
        var about = new HashMap<String, Object>(key);
        about.put("site", site.value());
        about.put("from", from);
        jdbc.sql(LOCK).param("site", site.value()).query((row, number) -> 0).single();
        jdbc.sql(replace).params(about).update();
        jdbc.sql(end).params(about).update();
        return jdbc.sql(next).params(about).query(LocalDate.class).optional();
    }
}
