package org.espalier.treatment;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import org.espalier.access.SiteId;
import org.espalier.access.StaffId;
import org.espalier.patient.ChildId;
import org.espalier.patient.FactId;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Facts beside the procedures, each kind in the table of its own. */
@Repository
class JdbcTreatmentFactRepository {

    /**
     * What is written down: a fact, or the withdrawal of one.
     *
     * @param on the day it is about; of a withdrawal, that of what is withdrawn
     */
    record Entry<F extends TreatmentFact>(
            ChildId child,
            FactId id,
            LocalDate on,
            @Nullable F fact,
            @Nullable StaffId by,
            Instant at,
            @Nullable FactId supersedes,
            @Nullable String reason) {}

    private static final String ADD = """
            insert into %1$s (id, site_id, recorded_site, child_id, %2$s, %3$s,
                supersedes, withdrawn, reason, recorded_by, recorded_at)
            select :id, c.site_id, c.site_id, c.id, :on, %4$s, :supersedes, :withdrawn, :reason, :by, :at
            from child c where c.id = :child
            on conflict do nothing
            """;
    private static final String KEPT = "select exists (select from %1$s where id = :id and child_id = :child)";
    private static final String ALL = """
            select f.id, f.%2$s as about, f.%3$s, f.supersedes, f.withdrawn, f.reason, f.recorded_at, s.name as by_name
            from %1$s f left join staff s on s.id = f.recorded_by
            where f.child_id = :child
            order by f.recorded_at, f.id
            """;
    private static final String IN_THEATRE = """
            select distinct p.child_id from treatment_plan p
            where p.site_id = :site and p.theatre_on = :day and not p.withdrawn
                and not exists (select from treatment_plan later where later.supersedes = p.id)
            """;
    private static final String NEXT_IN_THEATRE = """
            select p.theatre_on from treatment_plan p
            where p.site_id = :site and p.theatre_on > :day and not p.withdrawn
                and not exists (select from treatment_plan later where later.supersedes = p.id)
                and not exists (select from procedure_act a where a.plan = p.id
                    and not exists (select from procedure_session s where s.supersedes = a.session_id))
            order by p.theatre_on limit 1
            """;

    private final JdbcClient jdbc;

    JdbcTreatmentFactRepository(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** Whether it is kept now; not when what it supersedes was superseded by another. */
    <F extends TreatmentFact> boolean add(FactTable<F> table, Entry<F> entry) {
        var values = table.row(entry.fact());
        var places = table.columns().stream()
                .map(column -> column.equals("answers") ? "cast(:answers as jsonb)" : ":" + column)
                .collect(Collectors.joining(", "));
        var statement = jdbc.sql(ADD.formatted(table.name(), table.day(), String.join(", ", table.columns()), places))
                .param("child", entry.child().value())
                .param("id", entry.id().value())
                .param("on", entry.on())
                .param(
                        "supersedes",
                        entry.supersedes() == null ? null : entry.supersedes().value())
                .param("withdrawn", entry.fact() == null)
                .param("reason", entry.reason())
                .param("by", entry.by() == null ? null : entry.by().value())
                .param("at", entry.at().atOffset(ZoneOffset.UTC));
        for (var column : table.columns()) {
            statement = statement.param(column, values.get(column));
        }
        statement.update();
        return isKept(table, entry.child(), entry.id());
    }

    boolean isKept(FactTable<?> table, ChildId child, FactId id) {
        return jdbc.sql(KEPT.formatted(table.name()))
                .param("id", id.value())
                .param("child", child.value())
                .query(Boolean.class)
                .single();
    }

    <F extends TreatmentFact> FactLog<F> all(FactTable<F> table, ChildId child) {
        return new FactLog<>(jdbc.sql(ALL.formatted(table.name(), table.day(), String.join(", f.", table.columns())))
                .param("child", child.value())
                .query((row, number) -> written(table, row))
                .list());
    }

    /** The children for whom theatre has a place on the day. */
    List<ChildId> inTheatre(SiteId site, LocalDate day) {
        return jdbc.sql(IN_THEATRE)
                .param("site", site.value())
                .param("day", day)
                .query((row, number) -> new ChildId(row.getObject("child_id", UUID.class)))
                .list();
    }

    /** The first day after the given one on which theatre has a place for a plan that still waits. */
    Optional<LocalDate> nextInTheatre(SiteId site, LocalDate day) {
        return jdbc.sql(NEXT_IN_THEATRE)
                .param("site", site.value())
                .param("day", day)
                .query((row, number) -> row.getObject("theatre_on", LocalDate.class))
                .optional();
    }

    private static <F extends TreatmentFact> Written<F> written(FactTable<F> table, ResultSet row) throws SQLException {
        var supersedes = row.getObject("supersedes", UUID.class);
        return new Written<>(
                new FactId(row.getObject("id", UUID.class)),
                row.getBoolean("withdrawn") ? null : table.reader().read(row.getObject("about", LocalDate.class), row),
                row.getString("by_name"),
                row.getObject("recorded_at", OffsetDateTime.class).toInstant(),
                supersedes == null ? null : new FactId(supersedes),
                row.getString("reason"));
    }
}
