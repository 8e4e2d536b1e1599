package org.espalier.reading.ui;

import com.vaadin.flow.component.confirmdialog.ConfirmDialog;
import org.espalier.kit.Texts;

/** Asks before a reading in the making is thrown away. */
class DiscardDialog extends ConfirmDialog {

    DiscardDialog(Runnable discard) {
        setHeader(Texts.text("reading.discard.title"));
        setText(Texts.text("reading.discard.text"));
        setCancelable(true);
        setCancelText(Texts.text("reading.discard.keep"));
        setConfirmText(Texts.text("reading.discard"));
        addConfirmListener(event -> discard.run());
    }
}
