package org.espalier.safety;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.espalier.access.SiteId;
import org.espalier.access.StaffId;
import org.espalier.patient.ChildId;
import org.espalier.treatment.ImplantFinding;
import org.espalier.treatment.ImplantId;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Reports of what broke. */
@Repository
class JdbcIncidentRepository {

    private static final String ADD = """
            insert into device_incident (id, site_id, recorded_site, child_id, implant_id, part, seen_on, product, lots,
                what,
                reported_by, reported_at)
            values (:id, :site, :site, :child, :implant, :part, :on, :product, :lots, :what, :by, :at)
            on conflict (implant_id, part, seen_on) do nothing
            """;
    private static final String SELECT = """
            select i.id, i.child_id, i.recorded_site, i.implant_id, i.part, i.seen_on, i.product, i.lots, i.what,
                s.name as by_name, i.reported_at
            from device_incident i join staff s on s.id = i.reported_by
            """;
    private static final String OF_CHILD = SELECT + "where i.child_id = :child order by i.seen_on desc limit 100";
    private static final String ONE = SELECT + "where i.id = :id";
    private static final String OF_SITES =
            SELECT + "where i.site_id = any(cast(:sites as uuid[])) order by i.reported_at desc limit 100";
    private static final String UNREPORTED = """
            select f.child_id, f.site_id, f.part, f.seen_on from implant_finding f
            where f.site_id = any(cast(:sites as uuid[])) and f.finding = 'BROKEN' and not f.withdrawn
                and not exists (select from implant_finding later where later.supersedes = f.id)
                and not exists (
                    select from device_incident i
                    where i.implant_id = f.implant and i.part = f.part and i.seen_on = f.seen_on)
            order by f.seen_on limit 100
            """;

    private final JdbcClient jdbc;

    JdbcIncidentRepository(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** Adds a report; false when there is one of the same finding. */
    boolean add(UUID id, SiteId site, ChildId child, BrokenPart broken, String what, StaffId by, Instant at) {
        return jdbc.sql(ADD)
                        .param("id", id)
                        .param("site", site.value())
                        .param("child", child.value())
                        .param("implant", broken.finding().implant().value())
                        .param("part", broken.finding().part().name())
                        .param("on", broken.finding().on())
                        .param("product", broken.product())
                        .param("lots", broken.lots())
                        .param("what", what)
                        .param("by", by.value())
                        .param("at", at.atOffset(ZoneOffset.UTC))
                        .update()
                == 1;
    }

    List<DeviceIncident> of(ChildId child) {
        return jdbc.sql(OF_CHILD)
                .param("child", child.value())
                .query(JdbcIncidentRepository::incident)
                .list();
    }

    Optional<DeviceIncident> find(UUID id) {
        return jdbc.sql(ONE)
                .param("id", id)
                .query(JdbcIncidentRepository::incident)
                .optional();
    }

    List<DeviceIncident> of(List<SiteId> sites) {
        return jdbc.sql(OF_SITES)
                .param("sites", ids(sites))
                .query(JdbcIncidentRepository::incident)
                .list();
    }

    /** What was seen broken and not reported, the longest ago first. */
    List<UnreportedBreak> unreported(List<SiteId> sites) {
        return jdbc.sql(UNREPORTED)
                .param("sites", ids(sites))
                .query((row, number) -> new UnreportedBreak(
                        new ChildId(row.getObject("child_id", UUID.class)),
                        new SiteId(row.getObject("site_id", UUID.class)),
                        ImplantFinding.Part.valueOf(row.getString("part")),
                        row.getObject("seen_on", LocalDate.class)))
                .list();
    }

    private static UUID[] ids(List<SiteId> sites) {
        return sites.stream().map(SiteId::value).toArray(UUID[]::new);
    }

    private static DeviceIncident incident(ResultSet row, int number) throws SQLException {
        return new DeviceIncident(
                row.getObject("id", UUID.class),
                new ChildId(row.getObject("child_id", UUID.class)),
                new SiteId(row.getObject("recorded_site", UUID.class)),
                new ImplantId(row.getObject("implant_id", UUID.class)),
                ImplantFinding.Part.valueOf(row.getString("part")),
                row.getObject("seen_on", LocalDate.class),
                row.getString("product"),
                row.getString("lots"),
                row.getString("what"),
                row.getString("by_name"),
                row.getObject("reported_at", OffsetDateTime.class).toInstant());
    }
}
