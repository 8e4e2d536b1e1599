package org.espalier.shell;

import com.vaadin.flow.server.CustomizedSystemMessages;
import com.vaadin.flow.server.ServiceInitEvent;
import com.vaadin.flow.server.SystemMessages;
import com.vaadin.flow.server.VaadinServiceInitListener;
import org.espalier.kit.Texts;
import org.springframework.stereotype.Component;

/** What a screen that was open says when the house can no longer answer it. Loading anew leads back to its place. */
@Component
class BrokenScreen implements VaadinServiceInitListener {

    private static final long serialVersionUID = 1;

    @Override
    public void serviceInit(ServiceInitEvent event) {
        event.getSource().setSystemMessagesProvider(_ -> words());
    }

    private static SystemMessages words() {
        var words = new CustomizedSystemMessages();
        words.setInternalErrorCaption(Texts.text("shell.broken"));
        words.setInternalErrorMessage(Texts.text("shell.broken.screen"));
        words.setCookiesDisabledCaption(Texts.text("shell.cookies"));
        words.setCookiesDisabledMessage(Texts.text("shell.cookies.say"));
        return words;
    }
}
