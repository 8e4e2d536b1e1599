package org.espalier.reading.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.Tag;
import com.vaadin.flow.component.dependency.JsModule;
import java.util.List;
import org.espalier.kit.Texts;
import org.espalier.science.quantity.Side;
import org.jspecify.annotations.Nullable;

/** Two films at one scale, a landmark chosen in one shown in the other: {@code frontend/film-pair/film-pair.ts}. */
@Tag("film-pair")
@JsModule("./film-pair/film-pair.ts")
class FilmPair extends Component {

    /**
     * One film of the pair.
     *
     * @param mmPerPx millimetres to a pixel; null where both are to be shown at the same height
     */
    record Film(String film, String caption, @Nullable Double mmPerPx, List<Mark> marks) {}

    /** A landmark in pixels of the film; the same key on both films. */
    record Mark(String key, Side side, String label, double x, double y) {}

    FilmPair(List<Film> films) {
        getElement().setPropertyList("films", films);
        getElement().setPropertyMap("texts", Texts.under("reading.pair."));
    }
}
