package org.espalier.patient.ui;

import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.TextField;
import com.vaadin.flow.data.binder.Result;
import com.vaadin.flow.data.converter.Converter;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.espalier.kit.Texts;
import org.espalier.patient.LabAnalyte;
import org.espalier.patient.LabResult;
import org.espalier.patient.LabUnit;
import org.espalier.platform.FormDraft;
import org.espalier.platform.Ids;
import org.jspecify.annotations.Nullable;

/** A value from the laboratory, in the unit of its report. */
final class LabResultForm extends FindingForm<LabResult> {

    private final Select<LabAnalyte> analyte = new Select<>();
    private final TextField value = new TextField(Texts.text("patient.lab.value"));
    private final Select<LabUnit> unit = new Select<>();
    private final TextField range = new TextField(Texts.text("patient.lab.range"));

    LabResultForm(LocalDate birth, LocalDate today, Ids ids, FormDraft<TypedFinding> draft) {
        super(LabResult.class, birth, today, ids, draft);
        labelDay("patient.lab.day");
        setUpFields();
        bindFields();
        remember("analyte", analyte, LabAnalyte.class);
        remember("value", value);
        remember("unit", unit, LabUnit.class);
        remember("range", range);
        goOn();
    }

    @Override
    void fill(LabResult result) {
        analyte.setValue(result.analyte());
        value.setValue(result.value().toPlainString());
        unit.setValue(result.unit());
        range.setValue(result.range() == null ? "" : result.range());
    }

    @Override
    Optional<String> problem() {
        return Optional.empty();
    }

    private void setUpFields() {
        analyte.setLabel(Texts.text("patient.lab.analyte"));
        analyte.setItems(LabAnalyte.values());
        analyte.setItemLabelGenerator(Texts::of);
        analyte.addValueChangeListener(change -> offerUnits(change.getValue()));
        unit.setLabel(Texts.text("patient.lab.unit"));
        unit.setItemLabelGenerator(Texts::of);
        value.getElement().setAttribute("inputmode", "decimal");
        value.setMaxLength(8);
        range.setHelperText(Texts.text("patient.lab.range.help"));
        range.setMaxLength(LabResult.RANGE_LENGTH);
        add(analyte);
        add(value);
        add(unit);
        add(range);
    }

    /** Units are offered, never chosen: the same number in the other unit is another result. */
    private void offerUnits(@Nullable LabAnalyte chosen) {
        var kept = unit.getValue();
        unit.setItems(chosen == null ? List.of() : chosen.units());
        unit.setValue(chosen != null && kept != null && chosen.units().contains(kept) ? kept : null);
    }

    private void bindFields() {
        binder().forField(analyte)
                .withValidator(Objects::nonNull, Texts.text("patient.lab.analyte.missing"))
                .bind("analyte");
        binder().forField(value)
                .withConverter(Converter.from(LabResultForm::number, BigDecimal::toPlainString))
                .bind("value");
        binder().forField(unit)
                .withValidator(Objects::nonNull, Texts.text("patient.lab.unit.missing"))
                .bind("unit");
        binder().forField(range).withNullRepresentation("").bind("range");
    }

    private static Result<BigDecimal> number(String typed) {
        var text = typed.strip().replace(',', '.');
        return text.matches("\\d{1,5}(\\.\\d{1,2})?") && new BigDecimal(text).signum() > 0
                ? Result.ok(new BigDecimal(text))
                : Result.error(Texts.text("patient.lab.value.range"));
    }
}
