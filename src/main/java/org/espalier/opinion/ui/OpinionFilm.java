package org.espalier.opinion.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.Tag;
import com.vaadin.flow.component.dependency.JsModule;
import com.vaadin.flow.component.dependency.NpmPackage;
import java.util.List;
import java.util.UUID;
import java.util.function.Consumer;
import org.espalier.film.Cover;
import org.espalier.kit.Texts;
import org.espalier.opinion.Drawing;
import org.espalier.opinion.Layer;
import org.espalier.opinion.ThreadId;
import tools.jackson.core.type.TypeReference;
import tools.jackson.databind.json.JsonMapper;

/** A film that is covered or drawn on: {@code frontend/opinion-film/opinion-film.ts}. */
@Tag("opinion-film")
@NpmPackage(value = "openseadragon", version = "6.1.1")
@JsModule("./opinion-film/opinion-film.ts")
class OpinionFilm extends Component {

    private static final JsonMapper JSON = new JsonMapper();
    private static final TypeReference<List<Cover>> COVERS = new TypeReference<>() {};
    private static final TypeReference<List<Drawing>> DRAWINGS = new TypeReference<>() {};

    private OpinionFilm(String film, String mode) {
        getElement().setProperty("mode", mode);
        getElement().setPropertyMap("texts", Texts.under("opinion.film."));
        getElement().setProperty("film", film);
    }

    /** A film of the hospital's own, to be covered before it is shown. */
    static OpinionFilm toCover(String film, List<Cover> covers, Consumer<List<Cover>> changed) {
        var shown = new OpinionFilm(film, "cover");
        shown.getElement().setPropertyList("covers", covers);
        shown.hear("covers-drawn", json -> changed.accept(JSON.readValue(json, COVERS)));
        return shown;
    }

    /** A copy in a thread. */
    static OpinionFilm toDraw(ThreadId thread, UUID film, boolean mayDraw, Consumer<List<Drawing>> drawn) {
        var shown = new OpinionFilm(address(thread, film), mayDraw ? "draw" : "look");
        shown.hear("layer-drawn", json -> drawn.accept(JSON.readValue(json, DRAWINGS)));
        return shown;
    }

    static String address(ThreadId thread, UUID film) {
        return "/api/opinions/" + thread.value() + "/films/" + film;
    }

    /** Where a photo of the hospital's own is asked for as films are. */
    static String ofPicture(UUID picture) {
        return "/api/pictures/" + picture;
    }

    void show(List<Layer> layers) {
        getElement().setPropertyList("layers", layers);
    }

    private void hear(String event, Consumer<String> json) {
        getElement()
                .addEventListener(
                        event,
                        heard -> json.accept(
                                heard.getEventData().get("event.detail.json").asString()))
                .addEventData("event.detail.json");
    }
}
