package org.espalier.safety;

import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
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
            insert into device_incident (id, site_id, recorded_site, child_id, implant_id, part, seen_on, product, lots, what,
                reported_by, reported_at)
            values (:id, :site, :site, :child, :implant, :part, :on, :product, :lots, :what, :by, :at)
            on conflict (implant_id, part, seen_on) do nothing
            """;
    private static final String OF_CHILD = """
            select i.id, i.implant_id, i.part, i.seen_on, i.product, i.lots, i.what, s.name as by_name, i.reported_at
            from device_incident i join staff s on s.id = i.reported_by
            where i.child_id = :child order by i.seen_on desc limit 100
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
                .query((row, number) -> new DeviceIncident(
                        row.getObject("id", UUID.class),
                        child,
                        new ImplantId(row.getObject("implant_id", UUID.class)),
                        ImplantFinding.Part.valueOf(row.getString("part")),
                        row.getObject("seen_on", LocalDate.class),
                        row.getString("product"),
                        row.getString("lots"),
                        row.getString("what"),
                        row.getString("by_name"),
                        row.getObject("reported_at", OffsetDateTime.class).toInstant()))
                .list();
    }
}
