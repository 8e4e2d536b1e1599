package org.espalier.reading.ui;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.dependency.StyleSheet;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.BeforeEnterObserver;
import com.vaadin.flow.router.HasDynamicTitle;
import com.vaadin.flow.router.NotFoundException;
import com.vaadin.flow.router.QueryParameters;
import com.vaadin.flow.router.Route;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.espalier.access.SiteService;
import org.espalier.film.FilmId;
import org.espalier.film.FilmState;
import org.espalier.kit.Address;
import org.espalier.kit.IdentityBanner;
import org.espalier.kit.PageParts;
import org.espalier.kit.Texts;
import org.espalier.kit.Urls;
import org.espalier.reading.GuideStep;
import org.espalier.reading.Reading;
import org.espalier.reading.ReadingDraft;
import org.espalier.reading.ReadingId;
import org.espalier.reading.ReadingSettings;

/** The film room: which film is in the address; which signed reading of it, when one is asked for, too. */
@Route("film/:film")
@StyleSheet("themes/film-room-page.css")
class FilmRoomView extends Composite<Div> implements BeforeEnterObserver, HasDynamicTitle {

    /** Names the signed reading that is to be read again blind. */
    static final String BLIND = "blind";

    private static final String READING = "reading";

    private final ReadingPresenter presenter;
    private final SiteService sites;
    private final FilmRoom room = new FilmRoom();

    FilmRoomView(ReadingPresenter presenter, SiteService sites) {
        this.presenter = presenter;
        this.sites = sites;
        getContent().addClassName("film-room-page");
    }

    @Override
    public String getPageTitle() {
        return Texts.page("reading.title");
    }

    @Override
    public void beforeEnter(BeforeEnterEvent event) {
        var film = Address.id(event, "film").map(FilmId::new);
        var asked = Address.asked(event, READING).map(ReadingId::new);
        Address.asked(event, BLIND)
                .ifPresent(first -> film.ifPresent(id -> presenter.readBlind(id, new ReadingId(first))));
        build(film.flatMap(id -> presenter.open(id, asked)).orElseThrow(NotFoundException::new));
    }

    private void build(FilmRoomState state) {
        var page = getContent();
        page.removeAll();
        state.child()
                .ifPresentOrElse(
                        child -> page.add(new IdentityBanner(
                                child.who(), sites.today(state.film().site()))),
                        () -> page.add(notice("reading.in-tray")));
        if (state.film().state() != FilmState.READY) {
            page.add(notice("reading.film." + state.film().state().name()));
            return;
        }
        if (state.isMoved()) {
            page.add(notice("reading.moved"));
        }
        page.add(head(state), room, caution());
        room.show(
                state.film().id(),
                FilmCaption.of(state, sites.today(state.film().site())));
        state.draft().ifPresent(this::showDraft);
        state.shown().ifPresent(this::showSigned);
        room.onSignRequested(event -> openSigning(state.film().id()));
    }

    private Div head(FilmRoomState state) {
        var head = new Div();
        head.addClassName("room-head");
        state.child()
                .map(child -> new Anchor(Urls.course(child.id().value()), Texts.text("reading.to-course")))
                .ifPresent(head::add);
        head.add(standing(state));
        state.draft().ifPresent(draft -> {
            head.add(new SettingsPanel(
                    draft.settings(), change -> choose(state.film().id(), change)));
            head.add(new FurtherPanel(
                    draft.settings(), change -> choose(state.film().id(), change)));
            head.add(new Button(Texts.text("reading.discard"), click -> openDiscarding(draft)));
        });
        if (state.draft().isEmpty() && state.mayCorrect()) {
            head.add(new Button(
                    Texts.text(state.isMoved() ? "reading.moved.read-again" : "reading.correct"),
                    click -> correct(state.shown().orElseThrow())));
        }
        state.twoReaders().map(TwoReadersPanel::new).ifPresent(head::add);
        state.sameDay()
                .forEach(other -> head.add(new Anchor(Urls.film(other.id().value()), Texts.text("reading.same-day"))));
        if (!state.signed().isEmpty()) {
            head.add(new ReadingHistory(state, sites.get(state.film().site()).zone()));
        }
        return head;
    }

    private Span standing(FilmRoomState state) {
        var key = state.draft().map(FilmRoomView::standing).orElseGet(() -> state.shown()
                .map(shown -> shown.isSuperseded() ? "reading.standing.superseded" : "reading.standing.signed")
                .orElse("reading.standing.unread"));
        var standing = new Span(Texts.text(key));
        standing.addClassName("standing");
        return standing;
    }

    private static String standing(ReadingDraft draft) {
        if (draft.isBlind()) {
            return "reading.standing.blind";
        }
        return draft.supersedes().isPresent() ? "reading.standing.correcting" : "reading.standing.draft";
    }

    private void showDraft(ReadingDraft draft) {
        room.show(draft, presenter.answer(draft));
    }

    private void showSigned(Reading reading) {
        room.show(presenter.marks(reading), GuideStep.of(reading.settings()), presenter.answer(reading));
    }

    private void choose(FilmId film, UnaryOperator<ReadingSettings> change) {
        presenter.choose(film, change).ifPresentOrElse(this::showDraft, this::reload);
    }

    private void correct(Reading signed) {
        presenter.correct(signed.id());
        UI.getCurrent().navigate(Urls.film(signed.film().value()));
        reload();
    }

    private void openSigning(FilmId film) {
        presenter
                .summary(film)
                .ifPresentOrElse(
                        summary ->
                                new SignDialog(summary, presenter, reading -> show(film, Optional.of(reading))).open(),
                        this::reload);
    }

    private void openDiscarding(ReadingDraft draft) {
        new DiscardDialog(() -> {
                    presenter.discard(draft.id());
                    show(draft.film(), Optional.empty());
                })
                .open();
    }

    private void show(FilmId film, Optional<ReadingId> reading) {
        var query = reading.map(id -> QueryParameters.of(READING, id.value().toString()))
                .orElseGet(QueryParameters::empty);
        UI.getCurrent().navigate(Urls.film(film.value()), query);
    }

    private void reload() {
        UI.getCurrent().refreshCurrentRoute(false);
    }

    private static Paragraph notice(String key) {
        var notice = new Paragraph(Texts.text(key));
        notice.addClassNames("notice", "soon");
        return notice;
    }

    private static Paragraph caution() {
        var caution = PageParts.caution("reading.caution");
        return caution;
    }
}
