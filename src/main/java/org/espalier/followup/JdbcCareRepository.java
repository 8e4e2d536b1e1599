package org.espalier.followup;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.espalier.access.SiteId;
import org.espalier.patient.Bone;
import org.espalier.patient.BoneEnd;
import org.espalier.patient.ChildId;
import org.espalier.science.quantity.Side;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** What the rules need to know of a child, read where it is kept; no look at a record is written down for a rule. */
@Repository
class JdbcCareRepository {

    record CareRow(
            SiteId site,
            LocalDate birth,
            LocalDate since,
            Optional<LocalDate> lastSeen,
            boolean boneDisease,
            boolean tibiaVara) {}

    record Filmed(Side side, LocalDate on) {}

    private static final String CHILD = """
            select c.site_id, coalesce(i.birth_date, c.birth_month) as birth,
                cast(c.recorded_at at time zone s.time_zone as date) as since,
                (select max(v.outcome_on) from visit v where v.child_id = c.id and v.outcome = 'ARRIVED') as seen,
                exists (select from diagnosis d where d.child_id = c.id and not d.withdrawn
                    and d.kind in ('RICKETS_NUTRITIONAL', 'RICKETS_HYPOPHOSPHATAEMIC', 'RICKETS_OTHER',
                        'SKELETAL_DYSPLASIA', 'RENAL')
                    and not exists (select from diagnosis later where later.supersedes = d.id)) as bone_disease,
                exists (select from diagnosis d where d.child_id = c.id and not d.withdrawn
                    and d.kind = 'TIBIA_VARA' and d.onset in ('EARLY', 'INFANTILE')
                    and not exists (select from diagnosis later where later.supersedes = d.id)) as tibia_vara
            from child c join site s on s.id = c.site_id left join child_identity i on i.child_id = c.id
            where c.id = :child
            """;
    private static final String PLATES = """
            select l.side, p.bone, p.bone_end from physis p join limb l on l.id = p.limb_id
            where p.child_id = :child and (p.bone = 'FEMUR' or p.bone_end = 'PROXIMAL')
            order by l.side desc, p.bone
            """;
    private static final String LAST_FILMS = """
            select n.side, max(f.taken_on) as taken_on
            from reading r join film f on f.id = r.film_id and f.child_id = r.child_id
                join reading_number n on n.reading_id = r.id
            where r.child_id = :child and f.taken_on is not null
            group by n.side
            """;

    private final JdbcClient jdbc;

    JdbcCareRepository(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    CareRow child(ChildId child) {
        return jdbc.sql(CHILD)
                .param("child", child.value())
                .query((row, number) -> new CareRow(
                        new SiteId(row.getObject("site_id", UUID.class)),
                        row.getObject("birth", LocalDate.class),
                        row.getObject("since", LocalDate.class),
                        VisitRows.day(row, "seen"),
                        row.getBoolean("bone_disease"),
                        row.getBoolean("tibia_vara")))
                .optional()
                .orElseThrow(() -> new IllegalArgumentException("no such child: " + child));
    }

    /** The growth plates about the knee. */
    List<GrowthPlate> plates(ChildId child) {
        return jdbc.sql(PLATES)
                .param("child", child.value())
                .query((row, number) -> new GrowthPlate(
                        Side.valueOf(row.getString("side")),
                        Bone.valueOf(row.getString("bone")),
                        BoneEnd.valueOf(row.getString("bone_end"))))
                .list();
    }

    /** The last film of each limb that was read. */
    List<Filmed> lastFilms(ChildId child) {
        return jdbc.sql(LAST_FILMS)
                .param("child", child.value())
                .query((row, number) ->
                        new Filmed(Side.valueOf(row.getString("side")), row.getObject("taken_on", LocalDate.class)))
                .list();
    }
}
