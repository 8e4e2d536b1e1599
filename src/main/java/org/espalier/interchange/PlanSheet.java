package org.espalier.interchange;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.espalier.science.quantity.Angle;
import org.espalier.treatment.Deformity;
import org.espalier.treatment.Plan;
import org.espalier.treatment.PlateSide;
import org.espalier.treatment.ProcedureKind;
import org.espalier.treatment.StandingPlan;
import org.espalier.treatment.Treatment;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

/**
 * What is or was meant to be done. One that rests on an agreed reversal is left out: two persons of this hospital
 * agreed to it, and no file can agree for another.
 */
@Component
class PlanSheet implements FactSheet<Plan> {

    private static final Map<String, ProcedureKind> KINDS = Words.all(ProcedureKind.class);
    private static final Map<String, PlateSide> PLATE_SIDES = Words.all(PlateSide.class);
    private static final Map<String, Deformity> DEFORMITIES = Words.all(Deformity.class);
    private static final double FARTHEST = 90;
    private static final int DECIMALS = 2;

    @Override
    public ClinicFile file() {
        return ClinicFile.PLANS;
    }

    @Override
    public Optional<Plan> read(ClinicRow row) {
        var on = row.cells().date("date");
        var kind = row.cells().oneOf("kind", KINDS);
        var where = PhysisCells.read(row);
        var plateSide = PhysisCells.optional(row, "plate_side", PLATE_SIDES);
        var deformity = PhysisCells.optional(row, "deformity", DEFORMITIES);
        @Nullable
        Angle past = row.cells().isEmpty("past_target_deg")
                ? null
                : row.cells()
                        .number("past_target_deg", -FARTHEST, FARTHEST)
                        .map(Angle::ofDegrees)
                        .orElse(null);
        var asked = row.dateOrNull("asked_on");
        var theatre = row.dateOrNull("theatre_on");
        return on.isEmpty() || kind.isEmpty() || where.isEmpty()
                ? Optional.empty()
                : Optional.of(new Plan(
                        on.get(),
                        kind.get(),
                        where.get().side(),
                        where.get().bone(),
                        where.get().end(),
                        plateSide.orElse(null),
                        deformity.orElse(null),
                        row.textOrNull("implants"),
                        row.textOrNull("intent"),
                        row.textOrNull("expectation"),
                        asked,
                        theatre,
                        past));
    }

    @Override
    public Map<String, String> cells(Plan plan) {
        var past = plan.pastTarget();
        var cells = PhysisCells.of(plan.side(), plan.bone(), plan.end());
        cells.put("date", plan.on().toString());
        cells.put("kind", Words.of(plan.kind()));
        cells.put("plate_side", Words.of(plan.plateSide()));
        cells.put("deformity", Words.of(plan.deformity()));
        cells.put("implants", Words.text(plan.implants()));
        cells.put("intent", Words.text(plan.intent()));
        cells.put("expectation", Words.text(plan.expectation()));
        cells.put("asked_on", Words.text(plan.askedOn()));
        cells.put("theatre_on", Words.text(plan.theatreOn()));
        cells.put("past_target_deg", past == null ? "" : Words.of(past.degrees(), DECIMALS));
        return cells;
    }

    @Override
    public List<Plan> standing(Treatment treatment) {
        return treatment.plans().stream()
                .map(StandingPlan::plan)
                .filter(plan -> !isReversal(plan))
                .sorted(Comparator.comparing(Plan::on)
                        .thenComparing(plan -> cells(plan).toString()))
                .toList();
    }

    private static boolean isReversal(Plan plan) {
        var side = plan.plateSide();
        var deformity = plan.deformity();
        return side != null && deformity != null && side.worsens(deformity);
    }
}
