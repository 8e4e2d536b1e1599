package org.espalier.patient.ui;

import com.vaadin.flow.component.select.Select;
import java.time.LocalDate;
import java.util.Objects;
import java.util.Optional;
import org.espalier.kit.Texts;
import org.espalier.patient.TibiaVaraStage;
import org.espalier.platform.FormDraft;
import org.espalier.platform.Ids;
import org.espalier.science.quantity.Side;

/** The stage of early onset tibia vara as the writer reads it on one film. */
final class StageForm extends FindingForm<TibiaVaraStage> {

    private final Select<Side> side = new Select<>();
    private final Select<TibiaVaraStage.Stage> stage = new Select<>();

    StageForm(LocalDate birth, LocalDate today, Ids ids, FormDraft<TypedFinding> draft) {
        super(TibiaVaraStage.class, birth, today, ids, draft);
        labelDay("patient.film-day");
        side.setLabel(Texts.text("patient.sides"));
        side.setItems(Side.values());
        side.setItemLabelGenerator(Texts::of);
        stage.setLabel(Texts.text("patient.stage"));
        stage.setItems(TibiaVaraStage.Stage.values());
        stage.setItemLabelGenerator(Texts::of);
        add(side);
        add(stage);
        binder().forField(side)
                .withValidator(Objects::nonNull, Texts.text("patient.sides.missing"))
                .bind("side");
        binder().forField(stage)
                .withValidator(Objects::nonNull, Texts.text("patient.stage.missing"))
                .bind("stage");
        remember("side", side, Side.class);
        remember("stage", stage, TibiaVaraStage.Stage.class);
        goOn();
    }

    @Override
    void fill(TibiaVaraStage finding) {
        side.setValue(finding.side());
        stage.setValue(finding.stage());
    }

    @Override
    Optional<String> problem() {
        return Optional.empty();
    }
}
