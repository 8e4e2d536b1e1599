package org.espalier.access;

import java.util.List;
import java.util.UUID;
import org.espalier.TestNetwork;

/** A row for a child in each table that the hospital of the tests leaves empty, so that no wall goes untried. */
public final class EveryRow {

    /** What is recorded of a child on a day begins and ends alike in every table of facts. */
    private static final String FACT = """
            insert into %s (id, site_id, recorded_site, child_id, recorded_by, recorded_at, %s)
            values (uuidv7(), :site, :site, :child, :staff, now(), %s)""";

    private static final List<String> STATEMENTS = List.of(
            FACT.formatted("bone_age", "assessed_on, bone_age_months, method", "'2025-06-01', 100, 'ELBOW'"),
            FACT.formatted("bone_disease", "since, control", "'2025-06-01', 'CONTROLLED'"),
            FACT.formatted("care_change", "kind, on_day", "'RESUMED', '2024-01-01'"),
            FACT.formatted("clinical_examination", "examined_on, hypermobility", "'2025-06-01', 4"),
            FACT.formatted("complication", "seen_on, kind, grade, side", "'2025-06-20', 'STIFFNESS', 1, 'RIGHT'"),
            FACT.formatted("diagnosis", "diagnosed_on, kind, sides", "'2025-06-01', 'RENAL', 'BOTH'"),
            FACT.formatted(
                    "imaging_report",
                    "imaged_on, modality, sides, reported_by",
                    "'2025-06-01', 'COMPUTED_TOMOGRAPHY', 'LEFT', 'A radiologist'"),
            FACT.formatted(
                    "lab_result", "sampled_on, analyte, value, unit", "'2025-06-01', 'PHOSPHATE', 1, 'MMOL_PER_L'"),
            FACT.formatted(
                    "physis_maturity",
                    "film_on, side, bone, bone_end, reader_name",
                    "'2025-06-01', 'LEFT', 'FIBULA', 'DISTAL', 'A reader'"),
            FACT.formatted("theatre_check", "checked_on, phase, answers", "'2025-06-10', 'BEFORE', '{}'"),
            "insert into family (child_id, site_id) values (:child, :site) on conflict do nothing",
            "insert into forecast_mark (child_id, site_id, mark) values (:child, :site, '-') on conflict do nothing",
            """
            insert into film_order_step (id, site_id, recorded_site, child_id, order_id, kind, rejected, recorded_by,
                recorded_at)
            select uuidv7(), :site, :site, :child, id, 'EXPOSURE_REJECTED', 'MOVED', :staff, now() from film_order
            where child_id = :child limit 1""",
            """
            insert into visit_step (id, site_id, recorded_site, child_id, visit_id, kind, on_day, source, recorded_by,
                recorded_at)
            select uuidv7(), :site, :site, :child, id, 'CAME_WITH_TRANSFER', '2025-06-01', 'TRANSFER', :staff, now()
            from visit where child_id = :child limit 1""",
            """
            insert into procedure_piece (session_id, act_number, number, site_id, recorded_site, child_id, role, what,
                outside)
            select session_id, number, 90, :site, :site, :child, 'BODY', 'plate', 'LOAN' from procedure_act
            where child_id = :child limit 1""",
            """
            insert into side_reversal_consent (reversal_id, site_id, recorded_site, child_id, asked_by, consented_by,
                consented_at, by_password)
            select id, :site, :site, :child, asked_by, (select max(id::text)::uuid from staff where id <> asked_by),
                now(), false
            from side_reversal where child_id = :child limit 1""",
            """
            insert into outcome_plate (child_id, recorded_site, site_id, side, bone, bone_end, plate_on, to_day,
                after_release, complication, came_back, diagnosis, age_years)
            values (:child, :site, :site, 'LEFT', 'TIBIA', 'PROXIMAL', '2025-06-10', '2025-07-01', 'NOT_DUE', false,
                false, 'OTHER', 9)""",
            """
            insert into outcome_forecast (child_id, recorded_site, site_id, side, bone, bone_end, from_day, film_on,
                beforehand, left_deg, came_deg)
            values (:child, :site, :site, 'LEFT', 'TIBIA', 'PROXIMAL', '2025-06-10', '2025-12-10', true,
                '{1, 2, 3, 4, 5}', 2)""",
            """
            with copied as (
                insert into clinical_picture
                select (jsonb_populate_record(p, jsonb_build_object('id', uuidv7()))).* from clinical_picture p
                where child_id = :child limit 1
                returning id)
            insert into clinical_picture_withdrawal (picture_id, site_id, recorded_site, child_id, reason, recorded_by,
                recorded_at)
            select id, :site, :site, :child, 'not theirs', :staff, now() from copied""");

    private EveryRow() {}

    public static void add(TestNetwork network, UUID site, UUID child, UUID staff) {
        for (var statement : STATEMENTS) {
            network.owner()
                    .sql(statement)
                    .param("site", site)
                    .param("child", child)
                    .param("staff", staff)
                    .update();
        }
    }
}
