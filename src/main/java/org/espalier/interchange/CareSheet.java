package org.espalier.interchange;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.espalier.science.quantity.Side;
import org.espalier.treatment.CareStep;
import org.espalier.treatment.Treatment;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

/** Care of a limb, or of both where no side is named: ended, handed over, taken up again. */
@Component
class CareSheet implements FactSheet<CareStep> {

    private static final Map<String, CareStep.Step> STEPS = Words.all(CareStep.Step.class);
    private static final Map<String, CareStep.EndReason> REASONS = Words.all(CareStep.EndReason.class);

    @Override
    public ClinicFile file() {
        return ClinicFile.CARE;
    }

    @Override
    public Optional<CareStep> read(ClinicRow row) {
        var on = row.cells().date("date");
        var step = row.cells().oneOf("step", STEPS);
        boolean ends = step.filter(CareStep.Step.ENDED::equals).isPresent();
        Optional<CareStep.EndReason> reason =
                ends ? row.cells().oneOf("reason", REASONS) : PhysisCells.optional(row, "reason", REASONS);
        @Nullable
        Side side = row.cells().isEmpty("side") ? null : PhysisCells.side(row).orElse(null);
        return on.isEmpty() || step.isEmpty() || (ends && reason.isEmpty())
                ? Optional.empty()
                : Optional.of(new CareStep(on.get(), side, step.get(), reason.orElse(null), row.textOrNull("note")));
    }

    @Override
    public Map<String, String> cells(CareStep step) {
        var side = step.side();
        Map<String, String> cells = new LinkedHashMap<>();
        cells.put("date", step.on().toString());
        cells.put("side", side == null ? "" : side.letter());
        cells.put("step", Words.of(step.step()));
        cells.put("reason", Words.of(step.whyEnded()));
        cells.put("note", Words.text(step.note()));
        return cells;
    }

    @Override
    public List<CareStep> standing(Treatment treatment) {
        return treatment.careSteps().facts();
    }
}
