package org.espalier.followup;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.espalier.access.SiteId;
import org.espalier.access.StaffId;
import org.espalier.patient.ChildId;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** What happened to visits, and who left care: facts. */
@Repository
class JdbcVisitStepRepository {

    private static final String ADD = """
            insert into visit_step (id, site_id, recorded_site, child_id, visit_id, kind, on_day, at_time, reason, note,
                source, recorded_by, recorded_at)
            values (:id, :site, :site, :child, :visit, :kind, :on, :atTime, :reason, :note, :source, :by, :at)
            """;
    private static final String OF_CHILD = """
            select id, child_id, visit_id, kind, on_day, at_time, reason, note, source, recorded_at
            from visit_step where child_id = :child order by recorded_at desc, id desc
            """;
    private static final String CHANGE_CARE = """
            insert into care_change (id, site_id, recorded_site, child_id, kind, reason, on_day, note, recorded_by,
                recorded_at)
            values (:id, :site, :site, :child, :kind, :reason, :on, :note, :by, :at)
            """;
    private static final String CARE = """
            select kind, reason, on_day, coalesce(note, '') as note from care_change where child_id = :child
            order by recorded_at desc, id desc limit 1
            """;

    private final JdbcClient jdbc;

    JdbcVisitStepRepository(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    void add(VisitStep step, SiteId site, @Nullable StaffId by) {
        jdbc.sql(ADD)
                .param("id", step.id())
                .param("site", site.value())
                .param("child", step.child().value())
                .param("visit", step.visit().value())
                .param("kind", step.kind().name())
                .param("on", step.on())
                .param("atTime", step.at())
                .param("reason", step.reason().map(Enum::name).orElse(null))
                .param("note", step.note().orElse(null))
                .param("source", step.source().name())
                .param("by", by == null ? null : by.value())
                .param("at", step.recordedAt().atOffset(ZoneOffset.UTC))
                .update();
    }

    /** The last first. */
    List<VisitStep> of(ChildId child) {
        return jdbc.sql(OF_CHILD)
                .param("child", child.value())
                .query(VisitRows::toStep)
                .list();
    }

    void end(UUID id, ChildId child, SiteId site, CareEnd end, @Nullable StaffId by, Instant at) {
        var kind = end.reason().isPresent() ? "ENDED" : "MATURE";
        change(id, child, site, kind, end.reason().map(Enum::name).orElse(null), end.on(), end.note(), by, at);
    }

    void resume(UUID id, ChildId child, SiteId site, LocalDate on, @Nullable StaffId by, Instant at) {
        change(id, child, site, "RESUMED", null, on, "", by, at);
    }

    /** That the child left care; empty in care. */
    Optional<CareEnd> end(ChildId child) {
        return jdbc.sql(CARE)
                .param("child", child.value())
                .query((row, number) -> row.getString("kind").equals("RESUMED")
                        ? Optional.<CareEnd>empty()
                        : Optional.of(new CareEnd(
                                Optional.ofNullable(row.getString("reason")).map(EndReason::valueOf),
                                row.getObject("on_day", LocalDate.class),
                                row.getString("note"))))
                .optional()
                .flatMap(end -> end);
    }

    private void change(
            UUID id,
            ChildId child,
            SiteId site,
            String kind,
            @Nullable String reason,
            LocalDate on,
            String note,
            @Nullable StaffId by,
            Instant at) {
        jdbc.sql(CHANGE_CARE)
                .param("id", id)
                .param("site", site.value())
                .param("child", child.value())
                .param("kind", kind)
                .param("reason", reason)
                .param("on", on)
                .param("note", note.isEmpty() ? null : note)
                .param("by", by == null ? null : by.value())
                .param("at", at.atOffset(ZoneOffset.UTC))
                .update();
    }
}
