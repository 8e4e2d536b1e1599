package org.espalier.followup.ui;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.button.ButtonVariant;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.textfield.EmailField;
import com.vaadin.flow.component.textfield.TextField;
import org.espalier.access.Site;
import org.espalier.followup.LetterService;
import org.espalier.followup.Letterhead;
import org.espalier.kit.Texts;
import org.espalier.platform.Drafts;

/** What letters say of the hospital: where it is and whom to call. */
final class LetterheadForm extends Composite<Section> {

    private static final int SHORTEST = 3;

    private final Site site;
    private final transient LetterService letters;
    private final TextField address = new TextField(Texts.text("followup.letterhead.address"));
    private final TextField phone = new TextField(Texts.text("followup.letterhead.phone"));
    private final EmailField staffMail = new EmailField(Texts.text("followup.letterhead.mail"));
    private final Div answer = new Div();
    private final KeptFields kept;

    LetterheadForm(Site site, LetterService letters, Drafts drafts) {
        this.site = site;
        this.letters = letters;
        answer.getElement().setAttribute("role", "status");
        address.setMaxLength(400);
        address.setErrorMessage(Texts.text("followup.letterhead.address.missing"));
        phone.setMaxLength(60);
        phone.setErrorMessage(Texts.text("followup.letterhead.phone.missing"));
        staffMail.setHelperText(Texts.text("followup.letterhead.mail.help"));
        staffMail.setErrorMessage(Texts.text("followup.letterhead.mail.unreadable"));
        letters.letterhead(site.id()).ifPresent(known -> {
            address.setValue(known.address());
            phone.setValue(known.phone());
            staffMail.setValue(known.staffMail() == null ? "" : known.staffMail());
        });
        kept = new KeptFields(drafts, "letterhead", site.id().value())
                .text("address", address)
                .text("phone", phone)
                .text("mail", staffMail);
        kept.goOn();
        var save = new Button(Texts.text("kit.save"), click -> save());
        save.addThemeVariants(ButtonVariant.PRIMARY);
        var fields = new Div(address, phone, staffMail);
        fields.addClassName("form-fields");
        getContent().addClassName("sheet");
        getContent().add(new H2(Texts.text("followup.letterhead", site.name())), answer, kept.said(), fields, save);
    }

    private void save() {
        address.setInvalid(address.getValue().strip().length() < SHORTEST);
        phone.setInvalid(phone.getValue().strip().length() < SHORTEST);
        if (!address.isInvalid() && !phone.isInvalid() && !staffMail.isInvalid()) {
            letters.saveLetterhead(
                    site.id(),
                    new Letterhead(
                            address.getValue().strip(),
                            phone.getValue().strip(),
                            staffMail.getValue().isBlank()
                                    ? null
                                    : staffMail.getValue().strip()));
            kept.discard();
            answer.setText(Texts.text("followup.kept"));
        }
    }
}
