package org.espalier.opinion.ui;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.dependency.StyleSheet;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.BeforeEnterObserver;
import com.vaadin.flow.router.HasDynamicTitle;
import com.vaadin.flow.router.Route;
import java.util.List;
import java.util.UUID;
import org.espalier.kit.Address;
import org.espalier.kit.PageParts;
import org.espalier.kit.Texts;
import org.espalier.kit.Urls;
import org.espalier.opinion.OpinionFilmService;
import org.espalier.opinion.ThreadId;

/** How do I read this film, before I know how others did? */
@Route("opinion/:thread/film/:film")
@StyleSheet("themes/film-room-page.css")
@StyleSheet("themes/opinion.css")
class ReadView extends Composite<Div> implements BeforeEnterObserver, HasDynamicTitle {

    private final OpinionFilmService films;

    ReadView(OpinionFilmService films) {
        this.films = films;
        getContent().addClassName("read-blind");
    }

    @Override
    public String getPageTitle() {
        return Texts.page("opinion.page");
    }

    @Override
    public void beforeEnter(BeforeEnterEvent event) {
        getContent().removeAll();
        var thread = Address.id(event, "thread").map(ThreadId::new);
        var film = Address.id(event, "film");
        if (thread.isEmpty() || film.isEmpty()) {
            gone();
        } else {
            show(thread.get(), film.get());
        }
    }

    private void show(ThreadId thread, UUID film) {
        var draft = films.read(thread, film);
        var answer = films.answer(thread, film);
        if (draft.isEmpty() || answer.isEmpty()) {
            gone();
            return;
        }
        var room = new BlindRoom(
                thread, film, draft.get(), answer.get(), List.of(Texts.text("opinion.read-blind.caption")));
        room.onSignRequested(asked -> {
            if (films.sign(thread, film)) {
                UI.getCurrent().navigate(Urls.opinion(thread.value()));
            }
        });
        var back = new Anchor(Urls.opinion(thread.value()), Texts.text("opinion.back"));
        getContent().add(new Div(new H1(Texts.text("opinion.read-blind")), back), room);
    }

    private void gone() {
        getContent()
                .add(
                        new H1(Texts.text("opinion.not-there")),
                        PageParts.paragraph("empty", Texts.text("opinion.read.gone")));
    }
}
