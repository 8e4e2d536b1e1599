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
    private static final String ADD =
            "insert into site (id, code, name, time_zone) values (:site, :code, :name, :zone)";
    private static final String CHANGE =
            "update site set code = :code, name = :name, time_zone = :zone where id = :site";

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

    void add(SiteId site, SiteData data) {
        write(ADD, site, data);
    }

    void change(SiteId site, SiteData data) {
        write(CHANGE, site, data);
    }

    private void write(String sql, SiteId site, SiteData data) {
        jdbc.sql(sql)
                .param("site", site.value())
                .param("code", data.code())
                .param("name", data.name())
                .param("zone", data.zone())
                .update();
    }

    private static Site toSite(ResultSet row, int number) throws SQLException {
        return new Site(
                new SiteId(row.getObject("id", UUID.class)),
                row.getString("code"),
                row.getString("name"),
                ZoneId.of(row.getString("time_zone")));
    }
}
