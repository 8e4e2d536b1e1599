package org.espalier.patient.ui;

import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.TextArea;
import com.vaadin.flow.component.textfield.TextField;
import com.vaadin.flow.data.binder.Result;
import com.vaadin.flow.data.binder.ValidationResult;
import java.time.LocalDate;
import java.util.Objects;
import java.util.Optional;
import org.espalier.kit.Texts;
import org.espalier.patient.AffectedSides;
import org.espalier.patient.ImagingReport;
import org.espalier.platform.FormDraft;
import org.espalier.platform.Ids;

/** A report of magnetic resonance or computed tomography with its key values. */
final class ImagingForm extends FindingForm<ImagingReport> {

    private final Select<ImagingReport.Modality> modality = new Select<>();
    private final Select<AffectedSides> sides = new Select<>();
    private final Select<ImagingReport.Bar> bar = new Select<>();
    private final TextField barShare = TypedNumber.field("patient.bar-share", "patient.percent");
    private final AngleCell femoral = new AngleCell(
            Texts.text("patient.torsion.femoral"),
            measure("patient.torsion.femoral", ImagingReport.LEAST_FEMORAL, "patient.direction.femoral."));
    private final AngleCell tibial = new AngleCell(
            Texts.text("patient.torsion.tibial"),
            measure("patient.torsion.tibial", ImagingReport.LEAST_TIBIAL, "patient.direction.THIGH_FOOT."));
    private final TextField reportedBy = new TextField(Texts.text("patient.reported-by"));
    private final TextArea report = new TextArea(Texts.text("patient.report"));

    ImagingForm(LocalDate birth, LocalDate today, Ids ids, FormDraft<TypedFinding> draft) {
        super(ImagingReport.class, birth, today, ids, draft);
        labelDay("patient.imaging.day");
        setUpFields();
        bindFields();
        remember("modality", modality, ImagingReport.Modality.class);
        remember("sides", sides, AffectedSides.class);
        remember("bar", bar, ImagingReport.Bar.class);
        remember("barShare", barShare);
        femoral.remember(this, "femoral");
        tibial.remember(this, "tibial");
        remember("reportedBy", reportedBy);
        remember("report", report);
        goOn();
    }

    @Override
    void fill(ImagingReport finding) {
        modality.setValue(finding.modality());
        sides.setValue(finding.sides());
        bar.setValue(finding.bar());
        barShare.setValue(finding.barShare() == null ? "" : finding.barShare().toString());
        femoral.setAngle(finding.femoralTorsion());
        tibial.setAngle(finding.tibialTorsion());
        reportedBy.setValue(finding.reportedBy());
        report.setValue(finding.report() == null ? "" : finding.report());
    }

    @Override
    Optional<String> problem() {
        boolean barred = bar.getOptionalValue()
                .filter(kind -> kind != ImagingReport.Bar.NONE)
                .isPresent();
        return barShare.isEmpty() || barred
                ? Optional.empty()
                : Optional.of(Texts.text("patient.bar-share.without-bar"));
    }

    @Override
    ImagingReport write() {
        return new ImagingReport(
                day(),
                modality.getValue(),
                sides.getValue(),
                bar.getValue(),
                share(barShare.getValue())
                        .getOrThrow(IllegalStateException::new)
                        .orElse(null),
                femoral.angle().orElse(null),
                tibial.angle().orElse(null),
                reportedBy.getValue(),
                report.getValue());
    }

    private void setUpFields() {
        modality.setLabel(Texts.text("patient.modality"));
        modality.setItems(ImagingReport.Modality.values());
        modality.setItemLabelGenerator(Texts::of);
        sides.setLabel(Texts.text("patient.sides"));
        sides.setItems(AffectedSides.values());
        sides.setItemLabelGenerator(Texts::of);
        sides.setHelperText(Texts.text("patient.imaging.sides.help"));
        bar.setLabel(Texts.text("patient.bar"));
        bar.setItems(ImagingReport.Bar.values());
        bar.setItemLabelGenerator(one -> one == null ? Texts.text("patient.not-recorded") : Texts.of(one));
        bar.setEmptySelectionAllowed(true);
        bar.setEmptySelectionCaption(Texts.text("patient.not-recorded"));
        reportedBy.setMaxLength(ImagingReport.NAME_LENGTH);
        report.setMaxLength(ImagingReport.REPORT_LENGTH);
        report.addClassName("wide");
        add(modality);
        add(sides);
        add(reportedBy);
        add(bar);
        add(barShare);
        add(femoral);
        add(tibial);
        add(report);
    }

    private void bindFields() {
        binder().forField(modality)
                .withValidator(Objects::nonNull, Texts.text("patient.modality.missing"))
                .bind("modality");
        binder().forField(sides)
                .withValidator(Objects::nonNull, Texts.text("patient.sides.missing"))
                .bind("sides");
        binder().forField(reportedBy)
                .withValidator(name -> !name.isBlank(), Texts.text("patient.reported-by.missing"))
                .bind("reportedBy");
        binder().forField(barShare)
                .withValidator((typed, context) ->
                        share(typed).getMessage().map(ValidationResult::error).orElseGet(ValidationResult::ok))
                .bind(one -> "", (one, value) -> {});
        femoral.bind(binder());
        tibial.bind(binder());
    }

    private static AngleCell.Measure measure(String name, int least, String directions) {
        return new AngleCell.Measure(
                Texts.text(name),
                least,
                ImagingReport.GREATEST_TORSION,
                way -> Texts.text(directions + (way == AngleCell.Way.PLUS ? "plus" : "minus")));
    }

    private static Result<Optional<Integer>> share(String typed) {
        return TypedNumber.parse(typed, 0, 1, 100, "patient.bar-share.range")
                .map(number -> number.map(Double::intValue));
    }
}
