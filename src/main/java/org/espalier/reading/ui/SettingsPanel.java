package org.espalier.reading.ui;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.details.Details;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.radiobutton.RadioButtonGroup;
import com.vaadin.flow.component.select.Select;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;
import org.espalier.kit.Texts;
import org.espalier.reading.CalibrationChoice;
import org.espalier.reading.ReadingSettings;

/** What the reader chooses beside the landmarks: limbs, scale, how the film was taken. Each choice is kept at once. */
class SettingsPanel extends Composite<Details> {

    private final transient Consumer<UnaryOperator<ReadingSettings>> choose;
    private ReadingSettings settings;

    SettingsPanel(ReadingSettings settings, Consumer<UnaryOperator<ReadingSettings>> choose) {
        this.settings = settings;
        this.choose = choose;
        var form = new Div(limbs(), calibration());
        form.addClassName("room-settings");
        getContent().add(form, new TakenForm(settings.taken(), taken -> change(now -> now.withTaken(taken))));
        getContent().addClassName("room-fold");
        summarise();
    }

    private void change(UnaryOperator<ReadingSettings> change) {
        settings = change.apply(settings);
        summarise();
        choose.accept(change);
    }

    private void summarise() {
        getContent()
                .setSummaryText(Texts.text(
                        "reading.settings.summary",
                        Texts.of(LimbChoice.of(settings.limbs())),
                        Texts.of(settings.calibration()),
                        Texts.of(settings.taken().stance())));
    }

    private RadioButtonGroup<LimbChoice> limbs() {
        var limbs = new RadioButtonGroup<LimbChoice>(Texts.text("reading.settings.limbs"));
        limbs.setItems(LimbChoice.values());
        limbs.setItemLabelGenerator(Texts::of);
        limbs.setValue(LimbChoice.of(settings.limbs()));
        limbs.addValueChangeListener(
                event -> change(now -> now.withLimbs(event.getValue().sides())));
        return limbs;
    }

    private Select<CalibrationChoice> calibration() {
        var choice = new Select<CalibrationChoice>();
        choice.setLabel(Texts.text("reading.settings.calibration"));
        choice.setItems(CalibrationChoice.values());
        choice.setItemLabelGenerator(Texts::of);
        choice.setValue(settings.calibration());
        choice.addValueChangeListener(event -> change(now -> now.withCalibration(event.getValue())));
        return choice;
    }
}
