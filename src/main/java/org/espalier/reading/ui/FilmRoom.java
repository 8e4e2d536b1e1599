package org.espalier.reading.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.ComponentEvent;
import com.vaadin.flow.component.ComponentEventListener;
import com.vaadin.flow.component.DomEvent;
import com.vaadin.flow.component.Tag;
import com.vaadin.flow.component.dependency.JsModule;
import com.vaadin.flow.component.dependency.NpmPackage;
import java.util.List;
import org.espalier.film.FilmId;
import org.espalier.kit.Texts;
import org.espalier.reading.GuideStep;
import org.espalier.reading.Marks;
import org.espalier.reading.MeasureAnswer;
import org.espalier.reading.ReadingDraft;

/**
 * The film with its landmarks, as {@code frontend/film-room/contract.ts} describes it. While a hand moves, it asks the
 * server past this component.
 */
@Tag("film-room")
@NpmPackage(value = "openseadragon", version = "6.1.1")
@JsModule("./film-room/film-room.ts")
class FilmRoom extends Component {

    FilmRoom() {
        getElement().setPropertyMap("texts", Texts.under("reading.room."));
    }

    /** Shows a film without landmarks: one that the reader may look at but not read. */
    void show(FilmId film, List<String> caption) {
        getElement().setProperty("film", film.value().toString());
        getElement().setPropertyList("caption", caption);
        getElement().setProperty("fixed", true);
    }

    /** Shows a draft to go on with. */
    void show(ReadingDraft draft, MeasureAnswer answer) {
        getElement().setProperty("fixed", false);
        getElement().setProperty("draft", draft.id().value().toString());
        getElement().setProperty("revision", draft.revision());
        getElement().setPropertyList("guide", GuideStep.of(draft.settings()));
        place(draft.marks(), answer);
    }

    /** Shows a signed reading. */
    void show(Marks marks, List<GuideStep> names, MeasureAnswer answer) {
        getElement().setProperty("fixed", true);
        getElement().setPropertyList("guide", names);
        place(marks, answer);
    }

    void onSignRequested(ComponentEventListener<SignRequested> listener) {
        addListener(SignRequested.class, listener);
    }

    private void place(Marks marks, MeasureAnswer answer) {
        getElement().setPropertyList("points", marks.points());
        getElement().setPropertyList("edges", marks.edges());
        getElement().setPropertyBean("answer", answer);
    }

    /** The reader asks to sign; everything placed is saved by then. */
    @DomEvent("sign-requested")
    public static class SignRequested extends ComponentEvent<FilmRoom> {

        public SignRequested(FilmRoom source, boolean fromClient) {
            super(source, fromClient);
        }
    }
}
