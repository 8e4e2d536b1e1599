package org.espalier.access.ui;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.dialog.Dialog;
import com.vaadin.flow.component.textfield.TextField;
import org.espalier.access.SignOnService;
import org.espalier.access.StaffMember;
import org.espalier.kit.Texts;
import org.springframework.dao.DuplicateKeyException;

/** Who somebody is at the provider of single sign-on. */
final class SignOnDialog extends Dialog {

    private final TextField subject = new TextField(Texts.text("access.sign-on.subject"));

    SignOnDialog(SignOnService signOn, StaffMember member, Runnable done) {
        setHeaderTitle(Texts.text("access.sign-on.of", member.name()));
        subject.setHelperText(Texts.text("access.sign-on.help"));
        subject.setMaxLength(255);
        signOn.subjectOf(member.id()).ifPresent(subject::setValue);
        add(subject);
        addClassName("admin-form");
        getFooter()
                .add(
                        new Button(Texts.text("access.cancel"), click -> close()),
                        new Button(Texts.text("access.sign-on.save"), click -> save(signOn, member, done)));
    }

    private void save(SignOnService signOn, StaffMember member, Runnable done) {
        try {
            if (subject.getValue().isBlank()) {
                signOn.unlink(member.id());
            } else {
                signOn.link(member.id(), subject.getValue());
            }
            close();
            done.run();
        } catch (DuplicateKeyException e) {
            Fields.check(subject, false, "access.sign-on.taken");
        }
    }
}
