package org.espalier.reading.ui;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.button.ButtonVariant;
import com.vaadin.flow.component.dialog.Dialog;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.NativeTable;
import com.vaadin.flow.component.html.NativeTableCell;
import com.vaadin.flow.component.html.NativeTableHeaderCell;
import com.vaadin.flow.component.html.NativeTableRow;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.UnorderedList;
import com.vaadin.flow.component.textfield.TextArea;
import java.util.function.Consumer;
import org.espalier.kit.Texts;
import org.espalier.reading.Caution;
import org.espalier.reading.NumberText;
import org.espalier.reading.ReadNumber;
import org.espalier.reading.ReadingId;
import org.espalier.reading.SignOutcome;

/** Shows exactly what will be signed, and signs it. */
class SignDialog extends Dialog {

    private static final int LONGEST_REASON = 400;

    private final SignSummary summary;
    private final transient ReadingPresenter presenter;
    private final transient Consumer<ReadingId> signed;
    private final TextArea reason = new TextArea(Texts.text("reading.sign.reason"));
    private final Div refusal = new Div();
    private final Button sign = new Button(Texts.text("reading.sign"));

    SignDialog(SignSummary summary, ReadingPresenter presenter, Consumer<ReadingId> signed) {
        this.summary = summary;
        this.presenter = presenter;
        this.signed = signed;
        setHeaderTitle(Texts.text(summary.isSuperseding() ? "reading.sign.title.superseding" : "reading.sign.title"));
        addClassName("sign-dialog");
        add(refusal, numbers(), cautions());
        if (summary.isSuperseding()) {
            reason.setRequiredIndicatorVisible(true);
            reason.setMaxLength(LONGEST_REASON);
            reason.setHelperText(Texts.text("reading.sign.reason.help"));
            reason.setWidthFull();
            add(reason);
        }
        add(new Paragraph(Texts.text("reading.sign.promise")));
        refusal.getElement().setAttribute("role", "alert");
        sign.addThemeVariants(ButtonVariant.LUMO_PRIMARY);
        sign.setDisableOnClick(true);
        sign.addClickListener(click -> sign());
        getFooter().add(new Button(Texts.text("reading.sign.cancel"), click -> close()), sign);
    }

    private void sign() {
        switch (presenter.sign(summary, reason.getValue())) {
            case SignOutcome.Signed done -> finish(done.reading());
            case SignOutcome.Refused refused -> refuse(refused.reason());
        }
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

    private NativeTable numbers() {
        var table = new NativeTable();
        table.addClassName("sign-numbers");
        summary.numbers().forEach(number -> table.add(row(number)));
        return table;
    }

    private static NativeTableRow row(ReadNumber number) {
        var name = new NativeTableHeaderCell(
                Texts.text("reading.sign.quantity", NumberText.label(number.quantity()), Texts.of(number.side())));
        name.getElement().setAttribute("scope", "row");
        return new NativeTableRow(
                name,
                new NativeTableCell(
                        NumberText.of(number.quantity(), number.value().orElseThrow())));
    }

    private UnorderedList cautions() {
        var list = new UnorderedList();
        summary.cautions().forEach(caution -> list.add(item(caution)));
        return list;
    }

    private static ListItem item(Caution caution) {
        var item = new ListItem(caution.text());
        item.addClassName(caution.isHarmful() ? "harm" : "soon");
        return item;
    }
}
