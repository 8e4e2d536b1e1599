package org.espalier.reading.ui;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.details.Details;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.radiobutton.RadioButtonGroup;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.IntegerField;
import com.vaadin.flow.component.textfield.NumberField;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;
import org.espalier.kit.Texts;
import org.espalier.reading.CalibrationChoice;
import org.espalier.reading.Positioning;
import org.espalier.reading.ReadingSettings;

/** What the reader chooses beside the landmarks: limbs, scale, how the child stood. Each choice is kept at once. */
class SettingsPanel extends Composite<Details> {

    private final transient Consumer<UnaryOperator<ReadingSettings>> choose;
    private ReadingSettings settings;

    SettingsPanel(ReadingSettings settings, Consumer<UnaryOperator<ReadingSettings>> choose) {
        this.settings = settings;
        this.choose = choose;
        var form = new Div(limbs(), calibration(), stance(), patella(), flexion());
        form.addClassName("room-settings");
        getContent().add(form);
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
                        Texts.of(settings.positioning().stance())));
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

    private Div calibration() {
        var choice = select("reading.settings.calibration", CalibrationChoice.values(), settings.calibration());
        var diameter = new NumberField(Texts.text("reading.settings.ball"));
        diameter.setMin(5);
        diameter.setMax(100);
        diameter.setStep(0.1);
        diameter.setHelperText(Texts.text("reading.settings.ball.help"));
        diameter.setErrorMessage(Texts.text("reading.settings.ball.error"));
        diameter.setValue(settings.ballDiameterMm());
        diameter.setVisible(settings.calibration() == CalibrationChoice.BALL);
        diameter.addValueChangeListener(event -> {
            if (!diameter.isInvalid()) {
                change(now -> now.withBallDiameter(event.getValue()));
            }
        });
        choice.addValueChangeListener(event -> {
            diameter.setVisible(event.getValue() == CalibrationChoice.BALL);
            change(now -> now.withCalibration(event.getValue()));
        });
        return new Div(choice, diameter);
    }

    private Select<Positioning.Stance> stance() {
        var stance = select(
                "reading.settings.stance",
                Positioning.Stance.values(),
                settings.positioning().stance());
        stance.addValueChangeListener(event -> position(now -> now.withStance(event.getValue())));
        return stance;
    }

    private Select<Positioning.Patella> patella() {
        var patella = select(
                "reading.settings.patella",
                Positioning.Patella.values(),
                settings.positioning().patella());
        patella.addValueChangeListener(event -> position(now -> now.withPatella(event.getValue())));
        return patella;
    }

    private IntegerField flexion() {
        var flexion = new IntegerField(Texts.text("reading.settings.flexion"));
        flexion.setMin(0);
        flexion.setMax(90);
        flexion.setHelperText(Texts.text("reading.settings.flexion.help"));
        flexion.setErrorMessage(Texts.text("reading.settings.flexion.error"));
        flexion.setValue(settings.positioning().kneeFlexion());
        flexion.addValueChangeListener(event -> {
            if (!flexion.isInvalid()) {
                position(now -> now.withKneeFlexion(event.getValue()));
            }
        });
        return flexion;
    }

    private void position(UnaryOperator<Positioning> change) {
        change(now -> now.withPositioning(change.apply(now.positioning())));
    }

    private static <E extends Enum<E>> Select<E> select(String label, E[] items, E value) {
        var select = new Select<E>();
        select.setLabel(Texts.text(label));
        select.setItems(items);
        select.setItemLabelGenerator(Texts::of);
        select.setValue(value);
        return select;
    }
}
