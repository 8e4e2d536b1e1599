package org.espalier.outcomes;

import java.time.LocalDate;
import java.util.UUID;
import org.espalier.TestNetwork;
import org.espalier.access.SiteId;
import org.espalier.film.TestDoor.Sender;
import org.espalier.patient.ChildId;
import org.espalier.patient.FactId;
import org.espalier.platform.Ids;
import org.espalier.reading.TestReader;
import org.espalier.treatment.Act;
import org.espalier.treatment.ImplantId;
import org.espalier.treatment.NextLook;
import org.espalier.treatment.PhysisKey;
import org.espalier.treatment.PlateSide;
import org.espalier.treatment.ProcedureData;
import org.espalier.treatment.ProcedureId;
import org.espalier.treatment.ProcedureKind;
import org.espalier.treatment.RecordOutcome;
import org.espalier.treatment.TestTreatment;
import org.espalier.treatment.TreatmentFact;
import org.espalier.treatment.TreatmentFactService;
import org.espalier.treatment.TreatmentService;
import org.springframework.stereotype.Component;

/**
 * Courses for a test, of girls with a right tibia in varus: 72 degrees on the first film, 15 short of the 87 aimed at.
 */
@Component
public class TestOutcomes {

    static final PhysisKey TIBIA = TestTreatment.TIBIA;
    static final LocalDate BIRTH = LocalDate.of(2013, 9, 1);
    static final LocalDate BEFORE = LocalDate.of(2021, 2, 1);
    static final LocalDate PLATE = LocalDate.of(2021, 3, 1);

    private final TestReader reader;
    private final TestNetwork network;
    private final TreatmentService treatments;
    private final TreatmentFactService facts;
    private final OutcomeRenewal renewal;
    private final Ids ids;

    TestOutcomes(
            TestReader reader,
            TestNetwork network,
            TreatmentService treatments,
            TreatmentFactService facts,
            OutcomeRenewal renewal,
            Ids ids) {
        this.reader = reader;
        this.network = network;
        this.treatments = treatments;
        this.facts = facts;
        this.renewal = renewal;
        this.ids = ids;
    }

    /** A film of a day on which the tibia was so many degrees straighter than at first. */
    record Film(LocalDate on, double straightened) {

        static Film of(int year, int month, double straightened) {
            return new Film(LocalDate.of(year, month, 1), straightened);
        }
    }

    /** A child whose films were all read before anything was done, so that no job foretells what it does not know. */
    ChildId child(Sender surgeon, Film... films) {
        var child = reader.child(surgeon, BIRTH);
        reader.signed(surgeon, reader.film(surgeon, child, BEFORE));
        for (var film : films) {
            reader.signed(surgeon, reader.film(surgeon, child, film.on()), film.straightened());
        }
        return child;
    }

    ImplantId plate(Sender surgeon, ChildId child, LocalDate on, boolean elsewhere) {
        var implant = new ImplantId(ids.next());
        act(surgeon, child, on, ProcedureKind.PLATE_PLACED, implant, elsewhere);
        return implant;
    }

    void act(Sender surgeon, ChildId child, LocalDate on, ProcedureKind kind, ImplantId implant, boolean elsewhere) {
        var act = Act.of(kind, TIBIA, PlateSide.LATERAL, implant, "plate, 2 screws", 3);
        var data = new ProcedureData(
                on, elsewhere, null, null, java.util.List.of(act), new NextLook(on.plusDays(84), "film"));
        demand(surgeon.does(() -> treatments.record(child, new ProcedureId(ids.next()), data)));
    }

    void fact(Sender surgeon, ChildId child, TreatmentFact fact) {
        demand(surgeon.does(() -> facts.record(child, new FactId(ids.next()), fact)));
    }

    private static void demand(RecordOutcome outcome) {
        if (outcome instanceof RecordOutcome.Stopped(var stops)) {
            throw new AssertionError("stopped: " + stops);
        }
    }

    /**
     * A forecast as it would have been given, of a plate of {@link #PLATE} by films of 72 and 80 degrees.
     *
     * @param on a day of which it said something, so that nothing is drawn between two
     * @param angles the joint angle on that day in degrees, at 5, 25, 50, 75 and 95 %
     */
    void foretold(Sender surgeon, ChildId child, LocalDate on, double never, double... angles) {
        network.owner()
                .sql("""
                insert into forecast (id, site_id, recorded_site, child_id, side, bone, bone_end, plate_on, version,
                    input_hash, inputs, outcome, recorded_at)
                values (uuidv7(), :site, :site, :child, 'RIGHT', 'TIBIA', 'PROXIMAL', :plate, 1,
                    md5(:child) || md5(:child), cast(:inputs as jsonb), cast(:outcome as jsonb), '2021-09-02')
                """.replace("md5(:child)", "md5(cast(:child as text))"))
                .param("site", surgeon.site().value())
                .param("child", child.value())
                .param("plate", PLATE)
                .param("inputs", """
                        {"site": "PROXIMAL_TIBIA", "deformity": "VARUS", "cause": "IDIOPATHIC_VARUS",
                        "isCauseStudied": true,
                        "sex": "FEMALE", "plateOn": "2021-03-01", "yearsAtPlate": 7.5, "targetDegrees": 87,
                        "films": [{"on": "2021-02-01", "degrees": 72}, {"on": "2021-09-01", "degrees": 80}]}
                        """)
                .param("outcome", """
                        {"from": "2021-09-01", "noResponse": 0.05, "hardwareFailed": 0.05, "never": %s,
                        "angles": [], "films": [
                        {"on": "2021-09-01", "low90": 77, "low50": 79, "middle": 80, "high50": 81, "high90": 83},
                        {"on": "%s", "low90": %s, "low50": %s, "middle": %s, "high50": %s, "high90": %s}]}
                        """.formatted(never, on, angles[0], angles[1], angles[2], angles[3], angles[4]))
                .update();
    }

    /** So many children of a hospital by what is kept of them alone, one plate each, their ends some weeks apart. */
    void crowd(UUID site, String came, int children) {
        network.owner()
                .sql("""
                with born as (
                    insert into child (id, site_id, recorded_site, initials, birth_month, sex, recorded_at, needs_visit)
                    select uuidv7(), :site, :site, 'X. X.', '2013-09-01', 'FEMALE', now(), false
                    from generate_series(1, :children)
                    returning id)
                insert into outcome_plate (child_id, recorded_site, site_id, side, bone, bone_end, plate_on, came,
                    to_day, past_deg, after_release, drift_deg, complication, came_back, diagnosis, age_years,
                    growth_years, never_foretold, reached_on)
                select id, :site, :site, 'RIGHT', 'TIBIA', 'PROXIMAL', '2022-01-10', :came,
                    date '2022-10-10' + place * 23,
                    case :came when 'STRAIGHT' then 0.5 when 'OVERSHOT' then 2.5 + place % 4 when 'SHORT' then -4 end,
                    'FILMED', place % 7, place % 9 = 1, place % 11 = 1, 'IDIOPATHIC', 8, 5, 0.05 + place % 5 * 0.05,
                    case when :came in ('STRAIGHT', 'OVERSHOT') then date '2022-10-01' + place * 23 end
                from (select id, cast(row_number() over (order by id) as int) as place from born) one
                """)
                .param("site", site)
                .param("children", children)
                .param("came", came)
                .update();
    }

    /** A forecast with the film that came later of every child of a crowd, errors within two degrees. */
    void foretellCrowd(UUID site) {
        network.owner().sql("""
                insert into outcome_forecast (child_id, recorded_site, site_id, side, bone, bone_end, from_day, film_on,
                    beforehand, left_deg, came_deg, line_deg)
                select child_id, :site, :site, 'RIGHT', 'TIBIA', 'PROXIMAL', '2022-03-01', '2022-09-01', true,
                    '{1, 3, 4, 5, 7}', 4 + 3 * sin(row_number() over (order by child_id)), 6
                from outcome_plate where recorded_site = :site
                """).param("site", site).update();
    }

    void renew(SiteId site) {
        renewal.renew(site);
    }
}
