package org.espalier.shell;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.html.UnorderedList;
import java.time.ZoneId;
import org.espalier.access.OwnPasskey;
import org.espalier.access.PasskeyService;
import org.espalier.access.SignAgain;
import org.espalier.kit.MomentText;
import org.espalier.kit.Texts;

/** The person's passkeys, the last used first, each to be removed; and a button to add one. */
final class PasskeysPanel extends Composite<Section> {

    private static final long serialVersionUID = 1;

    private final transient PasskeyService passkeys;
    private final transient SignAgain signAgain;
    private final transient Runnable changed;
    private final ZoneId zone;

    PasskeysPanel(PasskeyService passkeys, SignAgain signAgain, ZoneId zone, Runnable changed) {
        this.passkeys = passkeys;
        this.signAgain = signAgain;
        this.zone = zone;
        this.changed = changed;
        show();
    }

    private void show() {
        var list = new UnorderedList();
        list.setClassName("ways-in");
        var mine = passkeys.mine();
        mine.forEach(one -> list.add(line(one)));
        getContent().removeAll();
        getContent()
                .add(
                        new H2(Texts.text("shell.account.passkeys")),
                        new Paragraph(Texts.text("shell.account.passkeys-say")),
                        mine.isEmpty() ? new Paragraph(Texts.text("shell.passkey.none")) : list,
                        adding());
    }

    private ListItem line(OwnPasskey one) {
        var name = new Span(one.label());
        name.setClassName("name");
        var added = MomentText.of(one.added(), zone);
        var said = one.used().isAfter(one.added())
                ? Texts.text("shell.passkey.used", added, MomentText.of(one.used(), zone))
                : Texts.text("shell.passkey.not-used", added);
        var remove = new Button(
                Texts.text("shell.passkey.remove"), click -> ProofDialog.before(signAgain, () -> remove(one)));
        remove.setAriaLabel(Texts.text("shell.passkey.remove.of", one.label(), added));
        return new ListItem(name, new Span(said), remove);
    }

    private void remove(OwnPasskey one) {
        passkeys.remove(one.id());
        show();
        changed.run();
    }

    /** The browser adds a key by itself, so that the proof must be there before. */
    private Component adding() {
        return signAgain.isNeeded()
                ? new Button(Texts.text("shell.passkey.prove"), click -> ProofDialog.before(signAgain, this::show))
                : PasskeyButton.register(
                        Texts.text("shell.account.passkey-add"),
                        Texts.text("shell.account.passkey-added"),
                        Texts.text("shell.account.passkey-failed"));
    }
}
