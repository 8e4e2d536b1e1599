package org.espalier.shell;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.html.UnorderedList;
import java.time.ZoneId;
import org.espalier.access.OpenSession;
import org.espalier.access.SessionService;
import org.espalier.access.SignAgain;
import org.espalier.kit.MomentText;
import org.espalier.kit.Texts;

/** Where the person is signed in, the last used first, each to be ended but the one they sit at. */
final class SessionsPanel extends Composite<Section> {

    private static final long serialVersionUID = 1;

    private final transient SessionService sessions;
    private final transient SignAgain signAgain;
    private final ZoneId zone;

    SessionsPanel(SessionService sessions, SignAgain signAgain, ZoneId zone) {
        this.sessions = sessions;
        this.signAgain = signAgain;
        this.zone = zone;
        show();
    }

    void show() {
        var list = new UnorderedList();
        list.setClassName("ways-in");
        var mine = sessions.mine();
        mine.forEach(one -> list.add(line(one)));
        getContent().removeAll();
        getContent().add(new H2(Texts.text("shell.sessions")), new Paragraph(Texts.text("shell.sessions.say")), list);
        if (mine.stream().anyMatch(one -> !one.here())) {
            getContent().add(new Button(Texts.text("shell.sessions.end-others"), click -> does(sessions::endOthers)));
        }
    }

    private ListItem line(OpenSession one) {
        var name = new Span(one.device());
        name.setClassName("name");
        var began = MomentText.of(one.began(), zone);
        var item =
                new ListItem(name, new Span(Texts.text("shell.sessions.line", began, MomentText.of(one.used(), zone))));
        if (one.here()) {
            item.add(new Span(Texts.text("shell.sessions.here")));
        } else {
            var end = new Button(Texts.text("shell.sessions.end"), click -> does(() -> sessions.end(one.id())));
            end.setAriaLabel(Texts.text("shell.sessions.end.of", one.device(), began));
            item.add(end);
        }
        return item;
    }

    private void does(Runnable deed) {
        ProofDialog.before(signAgain, () -> {
            deed.run();
            show();
        });
    }
}
