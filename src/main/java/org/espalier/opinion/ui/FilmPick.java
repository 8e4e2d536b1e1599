package org.espalier.opinion.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.checkbox.Checkbox;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H3;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.espalier.film.ClinicalPicture;
import org.espalier.film.Cover;
import org.espalier.film.FilmId;
import org.espalier.film.PictureId;
import org.espalier.kit.DateText;
import org.espalier.kit.PageParts;
import org.espalier.kit.Texts;
import org.espalier.opinion.FilmToShow;
import org.espalier.opinion.PictureToShow;
import org.espalier.opinion.ShowableFilm;
import org.espalier.opinion.ShowablePicture;

/**
 * Which films, photos and clips are shown, what of each is covered, and that the asker has looked at each as it will be
 * seen. Of a clip nothing can be covered, so it is played to its end before anything can be said of it.
 */
class FilmPick extends Composite<Div> {

    private final List<UUID> shown = new ArrayList<>();
    private final Map<UUID, List<Cover>> covers = new HashMap<>();
    private final Set<UUID> checked = new HashSet<>();
    private final Set<UUID> films = new HashSet<>();
    private final Runnable changed;

    FilmPick(
            List<ShowableFilm> all,
            List<ShowablePicture> pictures,
            List<UUID> shown,
            Map<UUID, List<Cover>> covers,
            Set<UUID> checked,
            Runnable changed) {
        this.changed = changed;
        this.shown.addAll(shown);
        this.covers.putAll(covers);
        this.checked.addAll(checked);
        all.forEach(film -> films.add(film.film().id().value()));
        getContent().addClassName("film-pick");
        if (all.isEmpty()) {
            getContent().add(PageParts.paragraph("empty", Texts.text("opinion.films.none")));
        }
        all.forEach(film -> getContent().add(film(film)));
        if (!pictures.isEmpty()) {
            getContent()
                    .add(
                            new H3(Texts.text("opinion.pictures")),
                            PageParts.paragraph("small", Texts.text("opinion.pictures.help")));
        }
        pictures.forEach(picture -> getContent().add(picture(picture.picture())));
    }

    /** Films, photos and clips, in the order in which they were chosen. */
    List<UUID> shown() {
        return shown;
    }

    Map<UUID, List<Cover>> covers() {
        return covers;
    }

    Set<UUID> checked() {
        return checked;
    }

    /** Whether each film, photo and clip that is to be shown was looked at. */
    boolean isChecked() {
        return checked.containsAll(shown);
    }

    List<FilmToShow> chosenFilms() {
        return shown.stream()
                .filter(films::contains)
                .map(film -> new FilmToShow(new FilmId(film), covers.getOrDefault(film, List.of())))
                .toList();
    }

    List<PictureToShow> chosenPictures() {
        return shown.stream()
                .filter(one -> !films.contains(one))
                .map(one -> new PictureToShow(new PictureId(one), covers.getOrDefault(one, List.of())))
                .toList();
    }

    private Div film(ShowableFilm showable) {
        var film = showable.film();
        var id = film.id().value();
        var taken = film.takenOn().map(DateText::of).orElseGet(() -> Texts.text("opinion.day-unknown"));
        var label = Texts.text("opinion.show-film", taken, film.view().orElse(""));
        return row(id, label, () -> toCover(id, id.toString(), "opinion.checked"));
    }

    private Div picture(ClinicalPicture picture) {
        var id = picture.id().value();
        var label = Texts.text(
                picture.kind().isClip() ? "opinion.show-clip" : "opinion.show-photo", DateText.of(picture.takenOn()));
        return row(
                id,
                label,
                () -> picture.kind().isClip()
                        ? toPlay(id)
                        : toCover(id, OpinionFilm.ofPicture(id), "opinion.checked.photo"));
    }

    private Div row(UUID id, String label, Looking looking) {
        var show = new Checkbox(label, shown.contains(id));
        var room = new Div();
        show.addValueChangeListener(change -> {
            shown.remove(id);
            if (change.getValue()) {
                shown.add(id);
            }
            fill(room, change.getValue(), looking);
            changed.run();
        });
        fill(room, show.getValue(), looking);
        return new Div(show, room);
    }

    private static void fill(Div room, boolean shown, Looking looking) {
        room.removeAll();
        if (shown) {
            room.add(looking.at());
        }
    }

    /** What is looked at before it is shown. */
    private interface Looking {
        Component at();
    }

    private Component toCover(UUID id, String address, String assurance) {
        var film = new Div();
        var look = new Button(Texts.text("opinion.cover"), click -> {
            click.getSource().setVisible(false);
            film.add(OpinionFilm.toCover(address, covers.getOrDefault(id, List.of()), drawn -> {
                covers.put(id, drawn);
                changed.run();
            }));
        });
        return new Div(look, film, assurance(id, assurance));
    }

    /** What is said of a clip can be said once it was played to its end. */
    private Component toPlay(UUID id) {
        var played = assurance(id, "opinion.checked.clip");
        played.setEnabled(checked.contains(id));
        var clip = new ClipPlayer("api/pictures/" + id, Texts.text("opinion.clip.play"));
        clip.onEnd(() -> played.setEnabled(true));
        return new Div(PageParts.paragraph("small", Texts.text("opinion.clip.play")), clip, played);
    }

    private Checkbox assurance(UUID id, String key) {
        var seen = new Checkbox(Texts.text(key), checked.contains(id));
        seen.addValueChangeListener(change -> {
            checked.remove(id);
            if (change.getValue()) {
                checked.add(id);
            }
            changed.run();
        });
        return seen;
    }
}
