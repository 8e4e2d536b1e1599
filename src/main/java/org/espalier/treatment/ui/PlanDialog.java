package org.espalier.treatment.ui;

import com.vaadin.flow.component.radiobutton.RadioButtonGroup;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.TextField;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.espalier.kit.DateEntryField;
import org.espalier.kit.DateText;
import org.espalier.kit.Texts;
import org.espalier.patient.FactId;
import org.espalier.science.quantity.Side;
import org.espalier.treatment.Act;
import org.espalier.treatment.Deformity;
import org.espalier.treatment.PhysisKey;
import org.espalier.treatment.Plan;
import org.espalier.treatment.PlateSide;
import org.espalier.treatment.ProcedureKind;
import org.espalier.treatment.RecordOutcome;
import org.espalier.treatment.StandingPlan;
import org.espalier.treatment.Treatment;
import org.espalier.treatment.TreatmentFact;
import org.jspecify.annotations.Nullable;

/** Plans a procedure, asks for theatre, gives it its day; or changes a plan with a reason. */
final class PlanDialog extends FactDialog {

    private final @Nullable StandingPlan before;
    private final Side limb;
    private final Select<ProcedureKind> kind = Choices.of(
            "treatment.procedure",
            Arrays.stream(ProcedureKind.values())
                    .filter(one -> !one.isOutsideTheatre())
                    .toList());
    private final Select<PhysisKey> physis;
    private final RadioButtonGroup<PlateSide> plateSide =
            Choices.radio("treatment.plate-side", Arrays.asList(PlateSide.values()));
    private final Select<Deformity> deformity =
            Choices.optional("treatment.deformity", Arrays.asList(Deformity.values()));
    private final TextField implants = Choices.text("treatment.plan.implants", Act.IMPLANTS_LENGTH);
    private final TextField intent = Choices.text("treatment.intent", TreatmentFact.REMARK_LENGTH);
    private final TextField expectation = Choices.text("treatment.expectation", TreatmentFact.REMARK_LENGTH);
    private final DateEntryField askedOn;
    private final DateEntryField theatreOn;
    private final TextField reason = Choices.text("treatment.reason", TreatmentFact.REMARK_LENGTH);

    PlanDialog(
            Side limb,
            Optional<PhysisKey> preset,
            Optional<StandingPlan> changed,
            Desk desk,
            Treatment treatment,
            Runnable done) {
        super(
                changed.isPresent() ? "treatment.plan.change" : "treatment.plan.new",
                "treatment.plan.save",
                desk,
                treatment,
                done);
        this.limb = limb;
        before = changed.orElse(null);
        physis = Choices.physis(PhysisKey.all(limb));
        physis.setEmptySelectionAllowed(true);
        physis.setEmptySelectionCaption(Texts.text("treatment.whole-limb"));
        askedOn = new DateEntryField(Texts.text("treatment.asked-on"), treatment::today);
        theatreOn = new DateEntryField(Texts.text("treatment.theatre-on"), treatment::today);
        reason.setVisible(before != null);
        kind.addValueChangeListener(change -> showFields());
        physis.setValue(preset.orElse(null));
        changed.map(StandingPlan::plan).ifPresent(this::fill);
        showFields();
        ask(kind, physis, plateSide, deformity, implants, askedOn, theatreOn, intent, expectation, reason);
    }

    @Override
    void check() {
        demand(kind, kind.getValue() != null, "treatment.procedure.missing");
        var what = Optional.ofNullable(kind.getValue());
        demand(
                physis,
                what.filter(ProcedureKind::needsPhysis).isEmpty() || physis.getValue() != null,
                "treatment.physis.missing");
        demand(
                plateSide,
                what.filter(ProcedureKind::needsPlateSide).isEmpty() || plateSide.getValue() != null,
                "treatment.plate-side.missing");
        demand(
                deformity,
                what.filter(ProcedureKind::turnsBone).isEmpty() || deformity.getValue() != null,
                "treatment.deformity.missing");
        demand(askedOn, askedOn.typed().isBlank() || askedOn.getValue() != null, "treatment.day.unreadable");
        demand(theatreOn, theatreOn.typed().isBlank() || theatreOn.getValue() != null, "treatment.day.unreadable");
        if (theatreOn.getValue() != null) {
            demand(askedOn, isInOrder(), "treatment.asked-on.missing");
        }
        demand(reason, before == null || !reason.getValue().isBlank(), "treatment.reason.missing");
    }

    private boolean isInOrder() {
        LocalDate asked = askedOn.getValue();
        return asked != null && !asked.isBefore(decided()) && !asked.isAfter(theatreOn.getValue());
    }

    private LocalDate decided() {
        return before == null ? treatment().today() : before.plan().on();
    }

    @Override
    TreatmentFact fact() {
        var where = Optional.ofNullable(physis.getValue());
        return new Plan(
                decided(),
                kind.getValue(),
                limb,
                where.map(PhysisKey::bone).orElse(null),
                where.map(PhysisKey::end).orElse(null),
                plateSide.isVisible() ? plateSide.getValue() : null,
                deformity.isVisible() ? deformity.getValue() : null,
                implants.getValue(),
                intent.getValue(),
                expectation.getValue(),
                askedOn.getValue(),
                theatreOn.getValue(),
                before == null ? null : before.plan().pastTarget());
    }

    @Override
    RecordOutcome keep(FactId fresh, TreatmentFact fact) {
        return before == null
                ? super.keep(fresh, fact)
                : desk().facts().replace(treatment().child(), before.id(), fresh, fact, reason.getValue());
    }

    private void fill(Plan plan) {
        kind.setValue(plan.kind());
        physis.setValue(plan.physis().orElse(null));
        plateSide.setValue(plan.plateSide());
        deformity.setValue(plan.deformity());
        implants.setValue(Optional.ofNullable(plan.implants()).orElse(""));
        intent.setValue(Optional.ofNullable(plan.intent()).orElse(""));
        expectation.setValue(Optional.ofNullable(plan.expectation()).orElse(""));
        List.of(askedOn, theatreOn).forEach(field -> {
            var day = field == askedOn ? plan.askedOn() : plan.theatreOn();
            if (day != null) {
                field.type(DateText.typed(day));
            }
        });
    }

    private void showFields() {
        var what = Optional.ofNullable(kind.getValue());
        plateSide.setVisible(what.filter(ProcedureKind::needsPlateSide).isPresent());
        deformity.setVisible(what.filter(ProcedureKind::turnsBone).isPresent());
    }
}
