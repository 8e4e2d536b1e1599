package org.espalier.treatment;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.espalier.access.SiteId;
import org.espalier.access.StaffId;
import org.espalier.patient.Bone;
import org.espalier.patient.BoneEnd;
import org.espalier.patient.ChildId;
import org.espalier.patient.FactId;
import org.espalier.science.quantity.Side;
import org.espalier.stock.Explant;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Procedures with their acts. */
@Repository
class JdbcProcedureRepository {

    private static final String SITE = "select site_id from child where id = :child";
    private static final String LOCK = "select site_id from child where id = :child for no key update";
    private static final String ADD = """
            insert into procedure_session (id, site_id, recorded_site, child_id, done_on, elsewhere, surgeon_name, note,
                theatre_minutes, anaesthesia_minutes, next_on, next_why, supersedes, withdrawn, reason, recorded_by,
                    recorded_at)
            select :id, c.site_id, c.site_id, c.id, :on, :elsewhere, :surgeon, :note,
                :theatre, :anaesthesia, :nextOn, :nextWhy, :supersedes, :withdrawn, :reason, :by, :at
            from child c where c.id = :child
            on conflict do nothing
            """;
    private static final String ADD_ACT = """
            insert into procedure_act (session_id, number, site_id, recorded_site, child_id, kind, side, bone, bone_end,
                plate_side, implant, implants, implant_count, answers, plan, reversal, explant_fate)
            select :session, :number, c.site_id, c.site_id, c.id, :kind, :side, :bone, :end,
                :plateSide, :implant, :implants, :count, cast(:answers as jsonb), :plan, :reversal,
                :fate
            from child c where c.id = :child
            """;
    private static final String IS_KEPT =
            "select exists (select from procedure_session where id = :id and child_id = :child)";
    private static final String SESSIONS = """
            select p.id, p.recorded_site, p.done_on, p.elsewhere, p.surgeon_name, p.note, p.theatre_minutes,
                p.anaesthesia_minutes, p.next_on, p.next_why, p.supersedes, p.withdrawn, p.reason, p.recorded_at, s.name
                    as by_name
            from procedure_session p left join staff s on s.id = p.recorded_by
            where p.child_id = :child
            order by p.recorded_at, p.id
            """;
    private static final String ACTS = """
            select session_id, number, kind, side, bone, bone_end, plate_side, implant, implants, implant_count,
                answers,
                plan, reversal, explant_fate
            from procedure_act where child_id = :child
            order by session_id, number
            """;

    private final JdbcClient jdbc;
    private final JdbcPieceRepository pieces;

    JdbcProcedureRepository(JdbcClient jdbc, JdbcPieceRepository pieces) {
        this.jdbc = jdbc;
        this.pieces = pieces;
    }

    Optional<SiteId> site(ChildId child) {
        return site(SITE, child);
    }

    /**
     * Holds everybody else off the child's treatment until this transaction is over, and names the site that has care.
     */
    Optional<SiteId> lock(ChildId child) {
        return site(LOCK, child);
    }

    private Optional<SiteId> site(String sql, ChildId child) {
        return jdbc.sql(sql)
                .param("child", child.value())
                .query((row, number) -> new SiteId(row.getObject("site_id", UUID.class)))
                .optional();
    }

    boolean isKept(ChildId child, ProcedureId id) {
        return jdbc.sql(IS_KEPT)
                .param("id", id.value())
                .param("child", child.value())
                .query(Boolean.class)
                .single();
    }

    /** Whether it is kept; not when what it supersedes was superseded by another. */
    boolean add(ChildId child, Procedure procedure, @Nullable StaffId by) {
        var data = procedure.data();
        int added = jdbc.sql(ADD)
                .param("child", child.value())
                .param("id", procedure.id().value())
                .param("on", procedure.on())
                .param("elsewhere", data.map(ProcedureData::elsewhere).orElse(false))
                .param("surgeon", data.map(ProcedureData::surgeon).orElse(null))
                .param("note", data.map(ProcedureData::note).orElse(null))
                .param("theatre", data.map(one -> one.measured().theatre()).orElse(null))
                .param(
                        "anaesthesia",
                        data.map(one -> one.measured().anaesthesia()).orElse(null))
                .param("nextOn", data.map(one -> one.next().date()).orElse(null))
                .param("nextWhy", data.map(one -> one.next().why()).orElse(null))
                .param(
                        "supersedes",
                        procedure.supersedes().map(ProcedureId::value).orElse(null))
                .param("withdrawn", data.isEmpty())
                .param("reason", procedure.reason())
                .param("by", by == null ? null : by.value())
                .param("at", procedure.at().atOffset(ZoneOffset.UTC))
                .update();
        if (added == 1) {
            data.ifPresent(one -> addActs(child, procedure.id(), one.acts()));
        }
        return added == 1;
    }

    /** As written, the newest last, superseded ones too. */
    List<Procedure> all(ChildId child) {
        Map<UUID, List<Act>> acts = new HashMap<>();
        var recorded = pieces.all(child);
        jdbc.sql(ACTS).param("child", child.value()).query(row -> {
            var session = row.getObject("session_id", UUID.class);
            var place = new JdbcPieceRepository.ActPlace(session, row.getInt("number"));
            acts.computeIfAbsent(session, id -> new ArrayList<>())
                    .add(act(row, recorded.getOrDefault(place, List.of())));
        });
        return jdbc.sql(SESSIONS)
                .param("child", child.value())
                .query((row, number) -> procedure(row, acts.getOrDefault(row.getObject("id", UUID.class), List.of())))
                .list();
    }

    private void addActs(ChildId child, ProcedureId session, List<Act> acts) {
        for (int at = 0; at < acts.size(); at++) {
            var act = acts.get(at);
            jdbc.sql(ADD_ACT)
                    .param("child", child.value())
                    .param("session", session.value())
                    .param("number", at + 1)
                    .param("kind", act.kind().name())
                    .param("side", act.side().name())
                    .param("bone", name(act.bone()))
                    .param("end", name(act.end()))
                    .param("plateSide", name(act.plateSide()))
                    .param(
                            "implant",
                            act.implant() == null ? null : act.implant().value())
                    .param("implants", act.implants())
                    .param("count", act.count())
                    .param("answers", FactTable.json(act.answers()))
                    .param("plan", act.plan() == null ? null : act.plan().value())
                    .param("reversal", act.reversal())
                    .param("fate", name(act.fate()))
                    .update();
            pieces.add(child, new JdbcPieceRepository.ActPlace(session.value(), at + 1), act.pieces());
        }
    }

    private static @Nullable String name(@Nullable Enum<?> constant) {
        return constant == null ? null : constant.name();
    }

    private static Procedure procedure(ResultSet row, List<Act> acts) throws SQLException {
        var on = row.getObject("done_on", LocalDate.class);
        return new Procedure(
                new ProcedureId(row.getObject("id", UUID.class)),
                new SiteId(row.getObject("recorded_site", UUID.class)),
                on,
                row.getBoolean("withdrawn") ? Optional.empty() : Optional.of(data(row, on, acts)),
                row.getString("by_name"),
                row.getObject("recorded_at", OffsetDateTime.class).toInstant(),
                Optional.ofNullable(row.getObject("supersedes", UUID.class)).map(ProcedureId::new),
                row.getString("reason"));
    }

    private static ProcedureData data(ResultSet row, LocalDate on, List<Act> acts) throws SQLException {
        return new ProcedureData(
                on,
                row.getBoolean("elsewhere"),
                row.getString("surgeon_name"),
                row.getString("note"),
                new MeasuredMinutes(
                        row.getObject("theatre_minutes", Integer.class),
                        row.getObject("anaesthesia_minutes", Integer.class)),
                acts,
                new NextLook(row.getObject("next_on", LocalDate.class), row.getString("next_why")));
    }

    private static Act act(ResultSet row, List<Piece> pieces) throws SQLException {
        var implant = row.getObject("implant", UUID.class);
        var plan = row.getObject("plan", UUID.class);
        var act = new Act(
                ProcedureKind.valueOf(row.getString("kind")),
                Side.valueOf(row.getString("side")),
                FactTable.constant(row, "bone", Bone.class),
                FactTable.constant(row, "bone_end", BoneEnd.class),
                FactTable.constant(row, "plate_side", PlateSide.class),
                implant == null ? null : new ImplantId(implant),
                row.getString("implants"),
                row.getInt("implant_count"),
                FactTable.answers(row.getString("answers")),
                plan == null ? null : new FactId(plan),
                row.getObject("reversal", UUID.class));
        var fate = FactTable.constant(row, "explant_fate", Explant.Fate.class);
        return fate == null ? act.withPieces(pieces) : act.withPieces(pieces).withFate(fate);
    }
}
