package org.espalier.opinion.ui;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.checkbox.Checkbox;
import com.vaadin.flow.component.html.Div;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.espalier.film.Cover;
import org.espalier.film.FilmId;
import org.espalier.kit.DateText;
import org.espalier.kit.Texts;
import org.espalier.opinion.FilmToShow;
import org.espalier.opinion.ShowableFilm;

/** Which films are shown, what of each is covered, and that the asker has looked at each as it will be seen. */
class FilmPick extends Composite<Div> {

    private final List<UUID> films = new ArrayList<>();
    private final Map<UUID, List<Cover>> covers = new HashMap<>();
    private final Set<UUID> checked = new HashSet<>();
    private final Runnable changed;

    FilmPick(
            List<ShowableFilm> all,
            List<UUID> films,
            Map<UUID, List<Cover>> covers,
            Set<UUID> checked,
            Runnable changed) {
        this.changed = changed;
        this.films.addAll(films);
        this.covers.putAll(covers);
        this.checked.addAll(checked);
        getContent().addClassName("film-pick");
        if (all.isEmpty()) {
            getContent().add(Parts.text("empty", Texts.text("opinion.films.none")));
        }
        all.forEach(film -> getContent().add(row(film)));
    }

    List<UUID> films() {
        return films;
    }

    Map<UUID, List<Cover>> covers() {
        return covers;
    }

    Set<UUID> checked() {
        return checked;
    }

    /** Whether each film that is to be shown was looked at. */
    boolean isChecked() {
        return checked.containsAll(films);
    }

    List<FilmToShow> chosen() {
        return films.stream()
                .map(film -> new FilmToShow(new FilmId(film), covers.getOrDefault(film, List.of())))
                .toList();
    }

    private Div row(ShowableFilm showable) {
        var id = showable.film().id().value();
        var taken = showable.film().takenOn().map(DateText::of).orElseGet(() -> Texts.text("opinion.day-unknown"));
        var show = new Checkbox(
                Texts.text("opinion.show-film", taken, showable.film().view().orElse("")), films.contains(id));
        var room = new Div();
        show.addValueChangeListener(change -> {
            films.remove(id);
            if (change.getValue()) {
                films.add(id);
            }
            fill(room, id, change.getValue());
            changed.run();
        });
        fill(room, id, show.getValue());
        return new Div(show, room);
    }

    private void fill(Div room, UUID id, boolean shown) {
        room.removeAll();
        if (!shown) {
            return;
        }
        var film = new Div();
        var look = new Button(Texts.text("opinion.cover"), click -> {
            click.getSource().setVisible(false);
            film.add(OpinionFilm.toCover(id, covers.getOrDefault(id, List.of()), drawn -> {
                covers.put(id, drawn);
                changed.run();
            }));
        });
        var seen = new Checkbox(Texts.text("opinion.checked"), checked.contains(id));
        seen.addValueChangeListener(change -> {
            checked.remove(id);
            if (change.getValue()) {
                checked.add(id);
            }
            changed.run();
        });
        room.add(look, film, seen);
    }
}
