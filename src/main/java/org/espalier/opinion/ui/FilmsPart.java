package org.espalier.opinion.ui;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Image;
import com.vaadin.flow.component.html.Section;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.espalier.kit.PageParts;
import org.espalier.kit.Texts;
import org.espalier.kit.Urls;
import org.espalier.opinion.BlindReading;
import org.espalier.opinion.OpinionThread;
import org.espalier.opinion.ShownFilm;
import org.espalier.opinion.ThreadId;

/** The films, one of them large with what everybody drew on it, and how those who read it blind read it. */
class FilmsPart extends Composite<Section> {

    private final ThreadId thread;
    private final ThreadServices services;
    private final Div strip = new Div();
    private final Div stage = new Div();
    private final Div below = new Div();
    private Optional<OpinionThread> last = Optional.empty();
    private Optional<UUID> shown = Optional.empty();
    private Optional<OpinionFilm> film = Optional.empty();

    FilmsPart(ThreadId thread, ThreadServices services) {
        this.thread = thread;
        this.services = services;
        strip.addClassName("film-strip");
        getContent().addClassName("sheet");
        getContent().add(strip, stage, below);
    }

    /** Shows a film large, and where it stands. */
    void look(UUID wanted) {
        last.ifPresent(open -> open.films().stream()
                .filter(one -> one.id().equals(wanted))
                .findFirst()
                .ifPresent(one -> {
                    show(open, one);
                    show(open);
                    stage.scrollIntoView();
                }));
    }

    void show(OpinionThread open) {
        last = Optional.of(open);
        getContent().setVisible(!open.films().isEmpty());
        if (open.films().isEmpty()) {
            forget();
            return;
        }
        strip.removeAll();
        open.films().forEach(one -> strip.add(thumbnail(open, one)));
        var chosen = shown.flatMap(id ->
                        open.films().stream().filter(one -> one.id().equals(id)).findFirst())
                .orElseGet(() -> open.films().getFirst());
        show(open, chosen);
    }

    /** Nothing is left of a picture that is shown no more. */
    private void forget() {
        List.of(strip, stage, below).forEach(Div::removeAll);
        shown = Optional.empty();
        film = Optional.empty();
    }

    private Button thumbnail(OpinionThread open, ShownFilm one) {
        var picture = new Image(OpinionFilm.address(thread, one.id()) + "/thumbnail", "");
        var button = new Button(Parts.atMonth(one.title(), one.months()), picture, click -> {
            show(open, one);
            show(open);
        });
        button.getElement()
                .setAttribute(
                        "aria-pressed",
                        String.valueOf(shown.filter(one.id()::equals).isPresent()));
        return button;
    }

    private void show(OpinionThread open, ShownFilm chosen) {
        if (shown.filter(chosen.id()::equals).isEmpty() || film.isEmpty()) {
            stage.removeAll();
            var large = OpinionFilm.toDraw(
                    thread,
                    chosen.id(),
                    open.mayWrite(),
                    drawn -> film.ifPresent(one -> one.show(services.films().draw(thread, chosen.id(), drawn))));
            stage.add(large);
            film = Optional.of(large);
            shown = Optional.of(chosen.id());
        }
        film.ifPresent(one -> one.show(services.films().layers(thread, chosen.id())));
        below.removeAll();
        var readings = services.films().readings(thread, chosen.id());
        boolean mine = readings.stream().anyMatch(BlindReading::mine);
        if (open.mayWrite() && !mine && !chosen.photo()) {
            var read = new Anchor(Urls.readOpinionFilm(thread.value(), chosen.id()), Texts.text("opinion.read-blind"));
            read.addClassName("act");
            below.add(Parts.actions(read), PageParts.paragraph("small", Texts.text("opinion.read-blind.help")));
        }
        if (!readings.isEmpty()) {
            below.add(new ReadingsTable(readings));
        }
        below.add(PageParts.paragraph("small", scale(chosen)));
    }

    private static String scale(ShownFilm chosen) {
        if (chosen.photo()) {
            return Texts.text("opinion.photo.facts", chosen.copy().covered());
        }
        return Texts.text(
                "opinion.film.facts",
                Texts.of(chosen.copy().scale().source()),
                chosen.copy().covered());
    }
}
