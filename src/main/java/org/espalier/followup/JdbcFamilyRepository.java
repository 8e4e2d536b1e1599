package org.espalier.followup;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.espalier.access.SiteId;
import org.espalier.patient.ChildId;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import tools.jackson.core.type.TypeReference;
import tools.jackson.databind.json.JsonMapper;

/** How families are reached. */
@Repository
class JdbcFamilyRepository {

    private static final JsonMapper JSON = JsonMapper.builder().build();
    private static final TypeReference<List<Phone>> PHONES = new TypeReference<>() {};

    private static final String COLUMNS = """
            select child_id, version, phones, language, interpreter, transport, school, do_not_contact,
                safeguarding_lead
            from family
            """;
    private static final String ONE = COLUMNS + "where child_id = :child";
    private static final String SOME = COLUMNS + "where site_id = :site and child_id = any(cast(:children as uuid[]))";
    private static final String ADD = """
            insert into family (child_id, site_id, phones, language, interpreter, transport, school, do_not_contact,
                safeguarding_lead)
            values (:child, :site, cast(:phones as jsonb), :language, :interpreter, :transport, :school, :doNotContact,
                :lead)
            on conflict (child_id) do nothing
            """;
    private static final String CHANGE = """
            update family set version = version + 1, phones = cast(:phones as jsonb), language = :language,
                interpreter = :interpreter, transport = :transport, school = :school, do_not_contact = :doNotContact,
                safeguarding_lead = :lead
            where child_id = :child and site_id = :site and version = :version
            """;

    private final JdbcClient jdbc;

    JdbcFamilyRepository(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    Family of(ChildId child) {
        return jdbc.sql(ONE)
                .param("child", child.value())
                .query((row, number) -> toFamily(row))
                .optional()
                .orElse(Family.UNKNOWN);
    }

    Map<ChildId, Family> of(SiteId site, Collection<ChildId> children) {
        var families = new HashMap<ChildId, Family>();
        jdbc.sql(SOME)
                .param("site", site.value())
                .param("children", children.stream().map(ChildId::value).toArray(UUID[]::new))
                .query((row, number) -> families.put(new ChildId(row.getObject("child_id", UUID.class)), toFamily(row)))
                .list();
        return families;
    }

    /** Whether the version was still the one that is kept; nothing is changed otherwise. */
    boolean save(SiteId site, ChildId child, Family family) {
        var statement = jdbc.sql(family.version() == 0 ? ADD : CHANGE)
                .param("child", child.value())
                .param("site", site.value())
                .param("phones", JSON.writeValueAsString(family.phones()))
                .param("language", family.language())
                .param("interpreter", family.interpreter())
                .param("transport", family.transport())
                .param("school", family.school())
                .param("doNotContact", family.doNotContact())
                .param("lead", family.safeguardingLead());
        return (family.version() == 0 ? statement : statement.param("version", family.version())).update() == 1;
    }

    private static Family toFamily(ResultSet row) throws SQLException {
        return new Family(
                row.getLong("version"),
                JSON.readValue(row.getString("phones"), PHONES),
                row.getString("language"),
                row.getBoolean("interpreter"),
                row.getString("transport"),
                row.getString("school"),
                row.getString("do_not_contact"),
                row.getString("safeguarding_lead"));
    }
}
