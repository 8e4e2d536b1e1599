package org.espalier.followup.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.button.ButtonVariant;
import com.vaadin.flow.component.dialog.Dialog;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.TextField;
import java.time.LocalDate;
import java.util.Optional;
import org.espalier.followup.VisitReason;
import org.espalier.kit.DateEntryField;
import org.espalier.kit.IdentityBanner;
import org.espalier.kit.Texts;
import org.espalier.kit.Who;

/** A few fields about a visit and one button that writes them down; what is wrong stands at its field. */
abstract class VisitDialog extends Dialog {

    private static final int NOTE_LENGTH = 400;

    private final Div fields = new Div();
    private final transient KeptFields kept;

    /**
     * @param kept what keeps what is typed; its fields are named by the dialog
     */
    VisitDialog(String title, String confirm, KeptFields kept) {
        this.kept = kept;
        setHeaderTitle(Texts.text(title));
        fields.addClassName("form-fields");
        add(kept.said(), fields);
        var save = new Button(Texts.text(confirm), click -> {
            if (save()) {
                kept.discard();
                close();
            }
        });
        save.addThemeVariants(ButtonVariant.PRIMARY);
        getFooter().add(new Button(Texts.text("followup.not-now"), click -> close()), save);
        setWidth("36rem");
    }
    /** Says first of which child this is. */
    final VisitDialog about(Who who, LocalDate today) {
        addComponentAsFirst(new IdentityBanner(who, today));
        return this;
    }

    /** Writes down what the fields hold; false when something must be mended first. */
    abstract boolean save();
    /** Says in the dialog why it was not written down; nothing typed goes then. */
    final boolean isWritten(Optional<String> problem) {
        problem.ifPresent(kept.said()::setText);
        return problem.isEmpty();
    }

    final <F extends Component> F field(F field) {
        fields.add(field);
        return field;
    }

    final DateEntryField day(String label, LocalDate today) {
        return field(new DateEntryField(Texts.text(label), () -> today));
    }

    final TextField note(String label) {
        var note = field(new TextField(Texts.text(label)));
        note.setMaxLength(NOTE_LENGTH);
        return note;
    }

    final Select<VisitReason> reason() {
        var reason = field(new Select<VisitReason>());
        reason.setLabel(Texts.text("followup.reason"));
        reason.setItems(VisitReason.values());
        reason.setItemLabelGenerator(Texts::of);
        reason.setValue(VisitReason.NOT_SAID);
        return reason;
    }

    /** Whether the day is there and stands where it must; says at the field when not. */
    static boolean isDay(DateEntryField field, boolean right, String problem) {
        var day = field.getValue();
        boolean good = day != null && right;
        field.setErrorMessage(Texts.text(problem));
        field.setInvalid(!good);
        return good;
    }
}
