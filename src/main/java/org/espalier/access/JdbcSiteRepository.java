package org.espalier.access;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

@Repository
class JdbcSiteRepository {

    private static final String ALL = "select id, code, name, time_zone from site order by name, code";
    private static final String ONE = "select id, code, name, time_zone from site where id = :site";

    private final JdbcClient jdbc;

    JdbcSiteRepository(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    List<Site> all() {
        return jdbc.sql(ALL).query(JdbcSiteRepository::toSite).list();
    }

    Optional<Site> find(SiteId site) {
        return jdbc.sql(ONE)
                .param("site", site.value())
                .query(JdbcSiteRepository::toSite)
                .optional();
    }

    private static Site toSite(ResultSet row, int number) throws SQLException {
        return new Site(
                new SiteId(row.getObject("id", UUID.class)),
                row.getString("code"),
                row.getString("name"),
                ZoneId.of(row.getString("time_zone")));
    }
}
