package org.espalier.treatment;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.espalier.access.StaffId;
import org.espalier.patient.Bone;
import org.espalier.patient.BoneEnd;
import org.espalier.patient.ChildId;
import org.espalier.science.quantity.Side;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Deliberate reversals and who consented to them. */
@Repository
class JdbcReversalRepository {

    private static final String ASK = """
            insert into side_reversal (id, site_id, recorded_site, child_id, side, bone, bone_end, plate_side, because,
                asked_by, asked_at)
            select :id, c.site_id, c.site_id, c.id, :side, :bone, :end, :plateSide, :because, :by, :at
            from child c where c.id = :child
            on conflict do nothing
            """;
    private static final String CONSENT = """
            insert into side_reversal_consent (reversal_id, site_id, recorded_site, child_id, asked_by, consented_by,
                consented_at, by_password)
            select r.id, r.site_id, r.site_id, r.child_id, r.asked_by, :by, :at, :byPassword
            from side_reversal r where r.id = :id and r.child_id = :child
            on conflict do nothing
            """;
    private static final String ALL = """
            select r.id, r.side, r.bone, r.bone_end, r.plate_side, r.because, r.asked_by, asker.name as asked_by_name,
                r.asked_at, second.name as consented_by_name, c.consented_at, c.by_password,
                (select p.id from procedure_act a join procedure_session p on p.id = a.session_id
                    where a.reversal = r.id
                        and not exists (select from procedure_session later where later.supersedes = p.id)
                    limit 1) as used_by
            from side_reversal r
                join staff asker on asker.id = r.asked_by
                left join side_reversal_consent c on c.reversal_id = r.id
                left join staff second on second.id = c.consented_by
            where r.child_id = :child
            order by r.asked_at, r.id
            """;

    private final JdbcClient jdbc;

    JdbcReversalRepository(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    void ask(ChildId child, UUID id, PhysisKey physis, PlateSide plateSide, String because, StaffId by, Instant at) {
        jdbc.sql(ASK)
                .param("child", child.value())
                .param("id", id)
                .param("side", physis.side().name())
                .param("bone", physis.bone().name())
                .param("end", physis.end().name())
                .param("plateSide", plateSide.name())
                .param("because", because)
                .param("by", by.value())
                .param("at", at.atOffset(ZoneOffset.UTC))
                .update();
    }

    void consent(ChildId child, UUID id, StaffId by, Instant at, boolean byPassword) {
        jdbc.sql(CONSENT)
                .param("child", child.value())
                .param("id", id)
                .param("by", by.value())
                .param("at", at.atOffset(ZoneOffset.UTC))
                .param("byPassword", byPassword)
                .update();
    }

    List<Reversal> all(ChildId child) {
        return jdbc.sql(ALL)
                .param("child", child.value())
                .query(JdbcReversalRepository::reversal)
                .list();
    }

    private static Reversal reversal(ResultSet row, int number) throws SQLException {
        return new Reversal(
                row.getObject("id", UUID.class),
                new PhysisKey(
                        Side.valueOf(row.getString("side")),
                        Bone.valueOf(row.getString("bone")),
                        BoneEnd.valueOf(row.getString("bone_end"))),
                PlateSide.valueOf(row.getString("plate_side")),
                row.getString("because"),
                new StaffId(row.getObject("asked_by", UUID.class)),
                row.getString("asked_by_name"),
                row.getObject("asked_at", OffsetDateTime.class).toInstant(),
                consent(row),
                Optional.ofNullable(row.getObject("used_by", UUID.class)).map(ProcedureId::new));
    }

    private static Optional<Reversal.Consent> consent(ResultSet row) throws SQLException {
        var at = row.getObject("consented_at", OffsetDateTime.class);
        return at == null
                ? Optional.empty()
                : Optional.of(new Reversal.Consent(
                        row.getString("consented_by_name"), at.toInstant(), row.getBoolean("by_password")));
    }
}
