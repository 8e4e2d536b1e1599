package org.espalier.film.ui;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.button.ButtonVariant;
import com.vaadin.flow.component.dialog.Dialog;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.TextField;
import java.math.BigDecimal;
import java.util.function.Consumer;
import org.espalier.film.DoseAreaProduct;
import org.espalier.film.FilmHappening;
import org.espalier.film.FilmHappening.RejectReason;
import org.espalier.film.FilmWish;
import org.espalier.kit.Texts;
import org.jspecify.annotations.Nullable;

/** Asks what belongs to something that happened to an order: the dose of an exposure, or the reason for none. */
final class StepDialog extends Dialog {

    /** What is written down. */
    enum Deed {
        TAKEN,
        REJECTED,
        NOT_TAKEN,
        WITHDRAWN;

        private boolean isExposure() {
            return this == TAKEN || this == REJECTED;
        }
    }

    private final Deed deed;
    private final Consumer<FilmHappening> happened;
    private final Select<RejectReason> why = new Select<>();
    private final TextField reason = new TextField(Texts.text("film.step.reason"));
    private final TextField dose = new TextField(Texts.text("film.dose"));
    private final Select<DoseAreaProduct.Unit> unit = new Select<>();

    /** @param order the child and the film, so that nothing is written down for another */
    StepDialog(Deed deed, String order, Consumer<FilmHappening> happened) {
        this.deed = deed;
        this.happened = happened;
        setHeaderTitle(Texts.of(deed));
        addClassName("order-dialog");
        why.setLabel(Texts.text("film.step.why"));
        why.setItems(RejectReason.values());
        why.setItemLabelGenerator(Texts::of);
        why.setVisible(deed == Deed.REJECTED);
        reason.setMaxLength(FilmWish.REASON_LENGTH);
        reason.setVisible(!deed.isExposure());
        reason.setWidthFull();
        dose.setHelperText(Texts.text("film.dose.help"));
        dose.getElement().setAttribute("inputmode", "decimal");
        dose.setMaxLength(10);
        dose.setVisible(deed.isExposure());
        unit.setLabel(Texts.text("film.dose.unit"));
        unit.setItems(DoseAreaProduct.Unit.values());
        unit.setItemLabelGenerator(one -> one == null ? Texts.text("film.dose.unit.choose") : Texts.of(one));
        unit.setEmptySelectionAllowed(true);
        unit.setEmptySelectionCaption(Texts.text("film.dose.unit.choose"));
        unit.setVisible(deed.isExposure());
        add(new Paragraph(order), why, reason, dose, unit);
        var confirm = new Button(Texts.text("film.step.confirm"), click -> confirm());
        confirm.addThemeVariants(ButtonVariant.PRIMARY);
        getFooter().add(new Button(Texts.text("film.cancel"), click -> close()), confirm);
    }

    private void confirm() {
        if (isGood()) {
            close();
            happened.accept(happening());
        }
    }

    private boolean isGood() {
        boolean known = deed != Deed.REJECTED || !why.isEmpty();
        why.setInvalid(!known);
        why.setErrorMessage(Texts.text("film.step.why.missing"));
        boolean said = deed.isExposure() || !reason.getValue().isBlank();
        reason.setInvalid(!said);
        reason.setErrorMessage(Texts.text("film.step.reason.missing"));
        var typed = typedDose();
        boolean readable =
                typed.isEmpty() || typed.matches("\\d{1,6}(\\.\\d{1,3})?") && new BigDecimal(typed).signum() > 0;
        dose.setInvalid(!readable);
        dose.setErrorMessage(Texts.text("film.dose.range"));
        boolean withUnit = typed.isEmpty() || !unit.isEmpty();
        unit.setInvalid(!withUnit);
        unit.setErrorMessage(Texts.text("film.dose.unit.missing"));
        return known && said && readable && withUnit;
    }

    private FilmHappening happening() {
        return switch (deed) {
            case TAKEN -> new FilmHappening.Taken(dose());
            case REJECTED -> new FilmHappening.Rejected(why.getValue(), dose());
            case NOT_TAKEN -> new FilmHappening.NotTaken(reason.getValue().strip());
            case WITHDRAWN -> new FilmHappening.Withdrawn(reason.getValue().strip());
        };
    }

    private @Nullable DoseAreaProduct dose() {
        return typedDose().isEmpty() ? null : new DoseAreaProduct(new BigDecimal(typedDose()), unit.getValue());
    }

    private String typedDose() {
        return dose.getValue().strip().replace(',', '.');
    }
}
