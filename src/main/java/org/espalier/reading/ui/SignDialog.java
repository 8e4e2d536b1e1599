package org.espalier.reading.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.button.ButtonVariant;
import com.vaadin.flow.component.dialog.Dialog;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.NativeTable;
import com.vaadin.flow.component.html.NativeTableCell;
import com.vaadin.flow.component.html.NativeTableHeaderCell;
import com.vaadin.flow.component.html.NativeTableRow;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.UnorderedList;
import com.vaadin.flow.component.textfield.Autocomplete;
import com.vaadin.flow.component.textfield.PasswordField;
import com.vaadin.flow.component.textfield.TextArea;
import java.util.function.Consumer;
import org.espalier.access.SignAgain;
import org.espalier.kit.Texts;
import org.espalier.kit.Urls;
import org.espalier.reading.MeasureAnswer;
import org.espalier.reading.ReadingId;
import org.espalier.reading.SignOutcome;
import org.espalier.science.quantity.Side;

/** Shows exactly what will be signed, and signs it. */
class SignDialog extends Dialog {

    private static final int LONGEST_REASON = 400;

    private final SignSummary summary;
    private final transient ReadingPresenter presenter;
    private final transient Consumer<ReadingId> signed;
    private final TextArea reason = new TextArea(Texts.text("reading.sign.reason"));
    private final PasswordField password = new PasswordField(Texts.text("reading.sign.password"));
    private final Div refusal = new Div();
    private final Button sign = new Button(Texts.text("reading.sign"));

    SignDialog(SignSummary summary, ReadingPresenter presenter, Consumer<ReadingId> signed) {
        this.summary = summary;
        this.presenter = presenter;
        this.signed = signed;
        setHeaderTitle(Texts.text(summary.isSuperseding() ? "reading.sign.title.superseding" : "reading.sign.title"));
        addClassName("sign-dialog");
        add(refusal, numbers(), warnings());
        if (summary.isSuperseding()) {
            reason.setRequiredIndicatorVisible(true);
            reason.setMaxLength(LONGEST_REASON);
            reason.setHelperText(Texts.text("reading.sign.reason.help"));
            reason.setWidthFull();
            reason.setValue(summary.moved() ? Texts.text("reading.moved.reason") : "");
            add(reason);
        }
        add(new Paragraph(Texts.text("reading.sign.promise")));
        if (presenter.mustProve()) {
            askForPassword();
        }
        refusal.getElement().setAttribute("role", "alert");
        sign.addThemeVariants(ButtonVariant.LUMO_PRIMARY);
        sign.setDisableOnClick(true);
        sign.addClickListener(click -> sign());
        getFooter().add(new Button(Texts.text("reading.sign.cancel"), click -> close()), sign);
    }

    private void sign() {
        if (presenter.mustProve() && !isProved()) {
            sign.setEnabled(true);
            return;
        }
        switch (presenter.sign(summary, reason.getValue())) {
            case SignOutcome.Signed done -> finish(done.reading());
            case SignOutcome.Refused refused -> refuse(refused.reason());
        }
    }

    private void askForPassword() {
        password.setHelperText(Texts.text("reading.sign.password.help"));
        password.setRequiredIndicatorVisible(true);
        password.setWidthFull();
        password.setAutocomplete(Autocomplete.CURRENT_PASSWORD);
        add(password, new Anchor(Urls.LOGIN, Texts.text("reading.sign.passkey")));
    }

    /** The last proof may have become too old while the summary was open. */
    private boolean isProved() {
        if (password.getParent().isEmpty()) {
            askForPassword();
            return false;
        }
        var answer = presenter.prove(password.getValue());
        password.setErrorMessage(Texts.text("reading.sign.password." + answer.name()));
        password.setInvalid(answer != SignAgain.Answer.CONFIRMED);
        return answer == SignAgain.Answer.CONFIRMED;
    }

    private void finish(ReadingId reading) {
        close();
        signed.accept(reading);
    }

    private void refuse(SignOutcome.Reason why) {
        refusal.setText(Texts.of(why));
        refusal.addClassNames("notice", "harm");
        reason.setInvalid(why == SignOutcome.Reason.REASON_MISSING);
        sign.setEnabled(true);
    }

    /** May be longer than the screen: it takes the focus, so that keys can scroll it. */
    private Div numbers() {
        var table = new NativeTable(row(
                new NativeTableHeaderCell(),
                header(Texts.of(Side.RIGHT), "col", "limb-right"),
                header(Texts.of(Side.LEFT), "col", "limb-left")));
        summary.rows()
                .forEach(row -> table.add(row(
                        header(row.label(), "row", "quantity"),
                        new NativeTableCell(row.right()),
                        new NativeTableCell(row.left()))));
        table.addClassName("sign-numbers");
        var numbers = new Div(table);
        numbers.getElement().setAttribute("tabindex", "0");
        numbers.getElement().setAttribute("role", "group");
        numbers.getElement().setAttribute("aria-label", Texts.text("reading.sign.numbers"));
        return numbers;
    }

    private static NativeTableRow row(Component... cells) {
        var row = new NativeTableRow();
        row.add(cells);
        return row;
    }

    private static NativeTableHeaderCell header(String text, String scope, String className) {
        var header = new NativeTableHeaderCell(text);
        header.getElement().setAttribute("scope", scope);
        header.addClassName(className);
        return header;
    }

    private UnorderedList warnings() {
        var list = new UnorderedList();
        summary.warnings().forEach(warning -> list.add(item(warning)));
        return list;
    }

    private static ListItem item(MeasureAnswer.Warning warning) {
        var side = warning.side();
        var item = new ListItem(
                side == null ? warning.text() : Texts.text("reading.caution.limb", Texts.of(side), warning.text()));
        item.addClassName(warning.severity());
        return item;
    }
}
