package org.espalier.opinion.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.ComponentEvent;
import com.vaadin.flow.component.ComponentEventListener;
import com.vaadin.flow.component.DomEvent;
import com.vaadin.flow.component.Tag;
import com.vaadin.flow.component.dependency.JsModule;
import java.util.List;
import java.util.UUID;
import org.espalier.kit.Texts;
import org.espalier.opinion.BlindDraft;
import org.espalier.opinion.ThreadId;
import org.espalier.reading.GuideStep;
import org.espalier.reading.MeasureAnswer;
import org.espalier.reading.ReadingSettings;

/** The room in which films are read, on a copy: {@code frontend/film-room/contract.ts}. */
@Tag("film-room")
@JsModule("./film-room/film-room.ts")
class BlindRoom extends Component {

    BlindRoom(ThreadId thread, UUID film, BlindDraft draft, MeasureAnswer answer, List<String> caption) {
        getElement().setPropertyMap("texts", Texts.under("reading.room."));
        getElement().setProperty("film", OpinionFilm.address(thread, film));
        getElement().setPropertyList("caption", caption);
        getElement().setProperty("fixed", false);
        getElement().setProperty("draft", "/api/opinions/readings/" + draft.id());
        getElement().setProperty("revision", draft.revision());
        getElement().setPropertyList("guide", GuideStep.of(ReadingSettings.ofFilm()));
        getElement().setPropertyList("points", draft.marks().points());
        getElement().setPropertyList("edges", draft.marks().edges());
        getElement().setPropertyBean("answer", answer);
    }

    void onSignRequested(ComponentEventListener<SignRequested> listener) {
        addListener(SignRequested.class, listener);
    }

    /** The reader asks to sign; everything placed is saved by then. */
    @DomEvent("sign-requested")
    public static class SignRequested extends ComponentEvent<BlindRoom> {

        public SignRequested(BlindRoom source, boolean fromClient) {
            super(source, fromClient);
        }
    }
}
