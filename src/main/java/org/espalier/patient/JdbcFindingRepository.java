package org.espalier.patient;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import org.espalier.access.StaffId;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;

/** Findings of one kind, in the table of their own. */
abstract class JdbcFindingRepository<F extends Finding> {

    /** What is written down: a finding, or the withdrawal of one. */
    record Entry<F extends Finding>(
            ChildId child,
            FactId id,
            LocalDate on,
            @Nullable F finding,
            @Nullable StaffId by,
            Instant at,
            @Nullable FactId supersedes,
            @Nullable String reason) {

        Entry {
            if (supersedes != null && (reason == null || reason.isBlank())) {
                throw new IllegalArgumentException("A fact is superseded for a reason");
            }
        }
    }

    private static final String ADD = """
            insert into %1$s (id, site_id, recorded_site, child_id, %2$s, %3$s,
                supersedes, withdrawn, reason, recorded_by, recorded_at)
            select :id, c.site_id, c.site_id, c.id, :on, %4$s, :supersedes, :withdrawn, :reason, :by, :at
            from child c where c.id = :child
            on conflict do nothing
            """;
    private static final String KEPT = "select exists (select from %1$s where id = :id)";
    private static final String ALL = """
            select f.id, f.%2$s as found_on, f.%3$s, f.supersedes, f.withdrawn, f.reason, f.recorded_at, s.name as
                by_name
            from %1$s f left join staff s on s.id = f.recorded_by
            where f.child_id = :child
            order by f.recorded_at, f.id
            """;

    private final JdbcClient jdbc;
    private final Class<F> kind;
    private final List<String> columns;
    private final String add;
    private final String kept;
    private final String all;

    JdbcFindingRepository(JdbcClient jdbc, Class<F> kind, String table, String dayColumn, List<String> columns) {
        this.jdbc = jdbc;
        this.kind = kind;
        this.columns = columns;
        var values = columns.stream().map(column -> ":" + column).collect(Collectors.joining(", "));
        add = ADD.formatted(table, dayColumn, String.join(", ", columns), values);
        kept = KEPT.formatted(table);
        all = ALL.formatted(table, dayColumn, String.join(", f.", columns));
    }

    Class<F> kind() {
        return kind;
    }

    abstract Map<String, @Nullable Object> values(F finding);

    abstract F finding(LocalDate on, ResultSet row) throws SQLException;

    /** Whether it is kept now; not when what it supersedes was superseded by another. */
    boolean add(Entry<F> entry) {
        var finding = entry.finding();
        Map<String, @Nullable Object> values = finding == null ? new HashMap<>() : values(finding);
        var statement = jdbc.sql(add)
                .param("child", entry.child().value())
                .param("id", entry.id().value())
                .param("on", entry.on())
                .param(
                        "supersedes",
                        entry.supersedes() == null ? null : entry.supersedes().value())
                .param("withdrawn", finding == null)
                .param("reason", entry.reason())
                .param("by", entry.by() == null ? null : entry.by().value())
                .param("at", entry.at().atOffset(ZoneOffset.UTC));
        for (var column : columns) {
            statement = statement.param(column, values.get(column));
        }
        statement.update();
        return jdbc.sql(kept)
                .param("id", entry.id().value())
                .query(Boolean.class)
                .single();
    }

    History<F> all(ChildId child) {
        return new History<>(
                jdbc.sql(all).param("child", child.value()).query(this::fact).list());
    }

    private Fact<F> fact(ResultSet row, int number) throws SQLException {
        var on = row.getObject("found_on", LocalDate.class);
        var supersedes = row.getObject("supersedes", UUID.class);
        return new Fact<>(
                new FactId(row.getObject("id", UUID.class)),
                on,
                row.getBoolean("withdrawn") ? null : finding(on, row),
                row.getString("by_name"),
                row.getObject("recorded_at", OffsetDateTime.class).toInstant(),
                supersedes == null ? null : new FactId(supersedes),
                row.getString("reason"));
    }
}
