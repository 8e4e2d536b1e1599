package org.espalier.opinion.ui;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.button.ButtonVariant;
import com.vaadin.flow.component.dependency.StyleSheet;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.BeforeEnterObserver;
import com.vaadin.flow.router.HasDynamicTitle;
import com.vaadin.flow.router.NotFoundException;
import com.vaadin.flow.router.Route;
import org.espalier.access.SiteService;
import org.espalier.kit.Address;
import org.espalier.kit.ChildHeader;
import org.espalier.kit.PageParts;
import org.espalier.kit.Texts;
import org.espalier.kit.Urls;
import org.espalier.opinion.Ask;
import org.espalier.opinion.AskOutcome;
import org.espalier.opinion.AskService;
import org.espalier.opinion.PanelService;
import org.espalier.opinion.Showable;
import org.espalier.opinion.ThreadId;
import org.espalier.patient.ChildId;
import org.espalier.platform.Drafts;

/** What do I ask, of whom, and what are they shown? Kept at every change until it is sent. */
@Route("child/:child/opinions/ask")
@StyleSheet("themes/patient.css")
@StyleSheet("themes/opinion.css")
class AskView extends Composite<Div> implements BeforeEnterObserver, HasDynamicTitle {

    private final AskService asks;
    private final PanelService panels;
    private final SiteService sites;
    private final Drafts drafts;
    private final Div answer = new Div();

    AskView(AskService asks, PanelService panels, SiteService sites, Drafts drafts) {
        this.asks = asks;
        this.panels = panels;
        this.sites = sites;
        this.drafts = drafts;
        answer.getElement().setAttribute("role", "alert");
    }

    @Override
    public String getPageTitle() {
        return Texts.page("opinion.page");
    }

    @Override
    public void beforeEnter(BeforeEnterEvent event) {
        var showable = Address.id(event, "child")
                .flatMap(id -> asks.showable(new ChildId(id)))
                .orElseThrow(NotFoundException::new);
        var child = showable.child();
        var today = sites.today(child.site());
        getContent().removeAll();
        getContent()
                .add(
                        new ChildHeader(child.id().value(), child.who(), today, ChildHeader.Page.OPINIONS),
                        form(showable));
    }

    private Div form(Showable showable) {
        var child = showable.child();
        var draft = new AskDraft(drafts, child.id().value());
        var before = draft.typed();
        var fields = new AskFields(sites.today(child.site()), asks.colleagues(), panels.all());
        fields.show(before);
        var picks = new Picks(showable, before);
        Runnable keep = () -> draft.keep(picks.into(fields.typed(before)));
        picks.changed = keep;
        fields.onChange(keep);
        var send = new Button(Texts.text("opinion.send"), click -> send(showable, before, draft, fields, picks));
        send.addThemeVariants(ButtonVariant.PRIMARY);
        var body = new Div(
                new H1(Texts.text("opinion.ask")),
                PageParts.paragraph("question", Texts.text("opinion.ask.what")),
                fields.asked(),
                fields.invited(),
                PageParts.part(
                        Texts.text("opinion.step.films"),
                        PageParts.paragraph("small", Texts.text("opinion.films.help")),
                        picks.films),
                PageParts.part(
                        Texts.text("opinion.step.facts"),
                        PageParts.paragraph("small", Texts.text("opinion.facts.help")),
                        picks.facts),
                answer,
                Parts.actions(send),
                PageParts.caution("opinion.caution"));
        body.addClassNames("screen", "opinions", "parts");
        return body;
    }

    /** Films and facts as they are chosen. */
    private static final class Picks {

        private final FilmPick films;
        private final FactPick facts;
        private Runnable changed = () -> {};

        Picks(Showable showable, TypedAsk before) {
            films = new FilmPick(
                    showable.films(),
                    showable.pictures(),
                    before.films(),
                    before.covers(),
                    before.checked(),
                    () -> changed.run());
            facts = new FactPick(showable.facts(), before.facts(), () -> changed.run());
        }

        TypedAsk into(TypedAsk typed) {
            return new TypedAsk(
                    typed.thread(),
                    typed.question(),
                    typed.wanted(),
                    typed.place(),
                    typed.dueBy(),
                    typed.hasFrame(),
                    typed.hasMri(),
                    typed.weeks(),
                    typed.consent(),
                    typed.colleagues(),
                    typed.panel(),
                    typed.everybody(),
                    typed.until(),
                    films.shown(),
                    films.covers(),
                    films.checked(),
                    facts.chosen());
        }
    }

    private void send(Showable showable, TypedAsk before, AskDraft draft, AskFields fields, Picks picks) {
        if (!fields.isComplete()) {
            say(Texts.text("opinion.incomplete"));
            return;
        }
        if (!picks.films.isChecked()) {
            say(Texts.text("opinion.not-checked"));
            return;
        }
        var outcome = asks.ask(new Ask(
                new ThreadId(before.thread()),
                showable.child().id(),
                fields.question(),
                fields.invitation(),
                picks.films.chosenFilms(),
                picks.films.chosenPictures(),
                picks.facts.chosen()));
        switch (outcome) {
            case AskOutcome.Refused refused -> say(Texts.of(refused.reason()));
            case AskOutcome.Asked asked -> {
                draft.discard();
                getUI().ifPresent(ui -> ui.navigate(Urls.opinion(asked.thread().value())));
            }
        }
    }

    private void say(String what) {
        answer.removeAll();
        answer.add(PageParts.paragraph("notice", what));
        answer.getChildren().forEach(one -> one.addClassName("harm"));
    }
}
