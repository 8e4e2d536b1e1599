package org.espalier.patient;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import org.espalier.access.SiteId;
import org.espalier.platform.Ids;
import org.espalier.science.quantity.Side;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Limbs and growth plates. */
@Repository
class JdbcLimbRepository {

    private static final String ADD_LIMB = """
            insert into limb (id, site_id, child_id, side) values (:limb, :site, :child, :side)
            """;
    private static final String ADD_PHYSIS = """
            insert into physis (id, site_id, child_id, limb_id, bone, bone_end)
            select :physis, l.site_id, l.child_id, l.id, :bone, :end from limb l
            where l.child_id = :child and l.side = :side
            on conflict (limb_id, bone, bone_end) do nothing
            """;
    private static final String PHYSES = """
            select p.id, p.limb_id, l.side, p.bone, p.bone_end
            from physis p join limb l on l.id = p.limb_id
            where p.child_id = :child
            order by l.side desc, p.bone, p.bone_end desc
            """;

    private final JdbcClient jdbc;
    private final Ids ids;

    JdbcLimbRepository(JdbcClient jdbc, Ids ids) {
        this.jdbc = jdbc;
        this.ids = ids;
    }

    void addLimb(SiteId site, ChildId child, Side side) {
        jdbc.sql(ADD_LIMB)
                .param("limb", ids.next())
                .param("site", site.value())
                .param("child", child.value())
                .param("side", side.name())
                .update();
    }

    /** Adds the growth plate unless it is there. */
    void addPhysis(ChildId child, Side side, Bone bone, BoneEnd end) {
        jdbc.sql(ADD_PHYSIS)
                .param("physis", ids.next())
                .param("child", child.value())
                .param("side", side.name())
                .param("bone", bone.name())
                .param("end", end.name())
                .update();
    }

    Optional<Physis> find(ChildId child, Side side, Bone bone, BoneEnd end) {
        return physes(child).stream()
                .filter(one -> one.side() == side && one.bone() == bone && one.end() == end)
                .findFirst();
    }

    /** The right limb first. */
    List<Limb> limbs(ChildId child) {
        var bySide = physes(child).stream()
                .collect(Collectors.groupingBy(Physis::side, LinkedHashMap::new, Collectors.toList()));
        return bySide.entrySet().stream()
                .map(side -> new Limb(side.getValue().getFirst().limb(), side.getKey(), side.getValue()))
                .toList();
    }

    private List<Physis> physes(ChildId child) {
        return jdbc.sql(PHYSES)
                .param("child", child.value())
                .query(JdbcLimbRepository::toPhysis)
                .list();
    }

    private static Physis toPhysis(ResultSet row, int number) throws SQLException {
        return new Physis(
                new PhysisId(row.getObject("id", UUID.class)),
                new LimbId(row.getObject("limb_id", UUID.class)),
                Side.valueOf(row.getString("side")),
                Bone.valueOf(row.getString("bone")),
                BoneEnd.valueOf(row.getString("bone_end")));
    }
}
