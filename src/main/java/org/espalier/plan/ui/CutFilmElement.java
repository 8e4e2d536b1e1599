package org.espalier.plan.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.ComponentEvent;
import com.vaadin.flow.component.ComponentEventListener;
import com.vaadin.flow.component.DomEvent;
import com.vaadin.flow.component.EventData;
import com.vaadin.flow.component.Tag;
import com.vaadin.flow.component.dependency.JsModule;
import org.espalier.kit.DateText;
import org.espalier.kit.Texts;
import org.espalier.plan.CutFilm;
import org.espalier.plan.CutRequest;

/**
 * A film that is cut and moved: {@code frontend/cut-film/cut-film.ts}. While a hand moves it asks the server past this
 * component; a cut that is let go of is told here.
 */
@Tag("cut-film")
@JsModule("./cut-film/cut-film.ts")
class CutFilmElement extends Component {

    /** A cut to start from, with its name. */
    public record Start(String bone, String kind, String name, CutRequest cut) {}

    CutFilmElement(CutFilm film, CutRequest start) {
        getElement().setProperty("film", film.film().value().toString());
        getElement().setProperty("day", Texts.text("plan.film.day", DateText.of(film.takenOn())));
        getElement().setPropertyBean("cut", start);
        getElement()
                .setPropertyList(
                        "starts",
                        film.starts().stream().map(CutFilmElement::named).toList());
        getElement().setPropertyMap("texts", Texts.under("plan.film."));
    }

    private static Start named(CutFilm.Start start) {
        var bone = start.bone().name();
        var kind = start.kind().name();
        return new Start(bone, kind, Texts.text("plan.film.kind." + bone + "." + kind), start.cut());
    }

    void onKept(ComponentEventListener<Kept> listener) {
        addListener(Kept.class, listener);
    }

    /** A cut was let go of. */
    @DomEvent("cut-kept")
    public static class Kept extends ComponentEvent<CutFilmElement> {

        private final String place;

        /** @param place its numbers, as the address of a sheet holds them */
        public Kept(CutFilmElement source, boolean fromClient, @EventData("event.detail") String place) {
            super(source, fromClient);
            this.place = place;
        }

        String place() {
            return place;
        }
    }
}
