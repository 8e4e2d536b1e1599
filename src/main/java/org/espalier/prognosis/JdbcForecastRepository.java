package org.espalier.prognosis;

import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import org.espalier.access.SiteId;
import org.espalier.patient.Bone;
import org.espalier.patient.BoneEnd;
import org.espalier.patient.ChildId;
import org.espalier.platform.Ids;
import org.espalier.prognosis.Reckoning.KeptInputs;
import org.espalier.science.forecast.CentreRates;
import org.espalier.science.quantity.Side;
import org.espalier.treatment.PhysisKey;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import tools.jackson.databind.json.JsonMapper;

/** Forecasts as they were given. */
@Repository
class JdbcForecastRepository {

    private static final String HASH = "encode(sha256(convert_to(:inputs, 'UTF8')), 'hex')";
    private static final String IS_KEPT = """
            select exists (select from forecast where child_id = :child and side = :side and bone = :bone
                and bone_end = :end and version = :version and input_hash = %s)
            """.formatted(HASH);
    private static final String ADD = """
            insert into forecast (id, site_id, recorded_site, child_id, side, bone, bone_end, plate_on, version,
                input_hash,
                inputs, outcome, recorded_at)
            select :id, c.site_id, c.site_id, c.id, :side, :bone, :end, :plateOn, :version, %s,
                cast(:inputs as jsonb), cast(:outcome as jsonb), :at
            from child c where c.id = :child
            on conflict do nothing
            """.formatted(HASH);

    /** Of each plate of the site the last one, which knows all its films. */
    private static final String LAST_OF_EACH_PLATE = """
            select inputs from (
                select distinct on (child_id, side, bone, bone_end, plate_on) inputs, plate_on, child_id, side, bone,
                    bone_end
                from forecast where site_id = :site
                order by child_id, side, bone, bone_end, plate_on, recorded_at desc, id desc) last
            order by plate_on desc, child_id, side, bone, bone_end limit :most
            """;

    private static final String OF_CHILD = """
            select side, bone, bone_end, inputs, outcome, recorded_at from forecast where child_id = :child
            order by outcome ->> 'from', recorded_at, id
            """;

    private final JdbcClient jdbc;
    private final JsonMapper json;
    private final Ids ids;

    JdbcForecastRepository(JdbcClient jdbc, JsonMapper json, Ids ids) {
        this.jdbc = jdbc;
        this.json = json;
        this.ids = ids;
    }

    boolean isKept(ChildId child, KeptInputs made) {
        return named(IS_KEPT, child, made).query(Boolean.class).single();
    }

    /** Keeps a forecast; the same facts are kept once. */
    void add(ChildId child, KeptInputs made, KeptOutcome outcome, Instant at) {
        named(ADD, child, made)
                .param("id", ids.next())
                .param("plateOn", made.inputs().plateOn())
                .param("outcome", json.writeValueAsString(outcome))
                .param("at", at.atOffset(ZoneOffset.UTC))
                .update();
    }

    /** The inputs of the latest plates of a site, the newest plate first. */
    List<ForecastInputs> lastOfEachPlate(SiteId site, int most) {
        return jdbc.sql(LAST_OF_EACH_PLATE)
                .param("site", site.value())
                .param("most", most)
                .query((row, number) -> json.readValue(row.getString("inputs"), ForecastInputs.class))
                .list();
    }

    /** Those of a child as they were given, the one that looks ahead from the earliest day first. */
    List<KeptForecast> of(ChildId child) {
        return jdbc.sql(OF_CHILD)
                .param("child", child.value())
                .query((row, number) -> new KeptForecast(
                        new PhysisKey(
                                Side.valueOf(row.getString("side")),
                                Bone.valueOf(row.getString("bone")),
                                BoneEnd.valueOf(row.getString("bone_end"))),
                        json.readValue(row.getString("inputs"), ForecastInputs.class),
                        json.readValue(row.getString("outcome"), KeptOutcome.class),
                        row.getObject("recorded_at", OffsetDateTime.class).toInstant()))
                .list();
    }

    private JdbcClient.StatementSpec named(String sql, ChildId child, KeptInputs made) {
        var physis = made.physis();
        return jdbc.sql(sql)
                .param("child", child.value())
                .param("side", physis.side().name())
                .param("bone", physis.bone().name())
                .param("end", physis.end().name())
                .param("version", CentreRates.VERSION)
                .param("inputs", json.writeValueAsString(made.inputs()));
    }
}
