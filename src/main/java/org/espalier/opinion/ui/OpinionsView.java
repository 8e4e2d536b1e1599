package org.espalier.opinion.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.dependency.StyleSheet;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.textfield.TextField;
import com.vaadin.flow.data.value.ValueChangeMode;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.BeforeEnterObserver;
import com.vaadin.flow.router.HasDynamicTitle;
import com.vaadin.flow.router.Menu;
import com.vaadin.flow.router.Route;
import java.time.Clock;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.espalier.access.CurrentStaff;
import org.espalier.access.Role;
import org.espalier.access.Site;
import org.espalier.access.SiteService;
import org.espalier.kit.DateText;
import org.espalier.kit.PageParts;
import org.espalier.kit.Texts;
import org.espalier.kit.Urls;
import org.espalier.opinion.Found;
import org.espalier.opinion.OpenCall;
import org.espalier.opinion.OpinionService;
import org.espalier.opinion.ThreadLine;

/** What was asked of me, what did we ask, and what came of what I said? */
@Route(Urls.OPINIONS)
@Menu(title = "opinion.menu", order = 7)
@StyleSheet("themes/patient.css")
@StyleSheet("themes/opinion.css")
class OpinionsView extends Composite<Div> implements BeforeEnterObserver, HasDynamicTitle {

    private final OpinionService opinions;
    private final SiteService sites;
    private final CurrentStaff staff;
    private final Clock clock;
    private final Div found = new Div();
    private ZoneId zone = ZoneOffset.UTC;

    OpinionsView(OpinionService opinions, SiteService sites, CurrentStaff staff, Clock clock) {
        this.opinions = opinions;
        this.sites = sites;
        this.staff = staff;
        this.clock = clock;
        found.getElement().setAttribute("aria-live", "polite");
        getContent().addClassNames("screen", "opinions");
    }

    @Override
    public void beforeEnter(BeforeEnterEvent event) {
        zone = sites.mine().stream().findFirst().map(Site::zone).orElse(ZoneOffset.UTC);
        refresh();
    }

    @Override
    public String getPageTitle() {
        return Texts.page("opinion.page");
    }

    private void refresh() {
        var lines = opinions.mine();
        var content = getContent();
        content.removeAll();
        content.add(new H1(Texts.text("opinion.title")));
        var parts = new Div();
        parts.addClassName("columns");
        if (staff.has(Role.SURGEON)) {
            content.add(search(), found);
            parts.add(
                    list(
                            "opinion.asked-of-me",
                            "opinion.asked-of-me.none",
                            lines,
                            line -> !line.mine() && !line.closed()),
                    calls());
        }
        parts.add(list("opinion.we-asked", "opinion.we-asked.none", lines, line -> line.mine() && !line.closed()));
        over("opinion.outcomes-due", lines, OpinionsView::isOutcomeDue).ifPresent(parts::add);
        over("opinion.closed", lines, OpinionsView::isOver).ifPresent(parts::add);
        content.add(parts);
        if (staff.has(Role.SURGEON)) {
            fared().ifPresent(content::add);
            ownWords().ifPresent(content::add);
        }
        if (staff.has(Role.SURGEON)) {
            content.add(new Anchor(Urls.OPINION_PANELS, Texts.text("opinion.panels")));
        }
        content.add(PageParts.caution("opinion.caution"));
    }

    private static boolean isOutcomeDue(ThreadLine line) {
        return line.mine() && line.outcomeDue().isPresent();
    }

    private static boolean isOver(ThreadLine line) {
        return line.closed() && !isOutcomeDue(line);
    }

    private Component search() {
        var typed = new TextField(Texts.text("opinion.search"));
        typed.setValueChangeMode(ValueChangeMode.LAZY);
        typed.setClearButtonVisible(true);
        typed.addValueChangeListener(change -> {
            found.removeAll();
            if (!change.getValue().isBlank()) {
                var hits = opinions.search(change.getValue());
                found.add(words(Texts.text("opinion.found", hits.size()), hits, true));
            }
        });
        typed.addClassName("search");
        return typed;
    }

    private Section list(String key, String none, List<ThreadLine> lines, Predicate<ThreadLine> which) {
        var chosen = lines.stream().filter(which).toList();
        return chosen.isEmpty()
                ? PageParts.part(Texts.text(key, 0), PageParts.paragraph("empty", Texts.text(none)))
                : list(key, chosen, "opinion.order");
    }

    private Optional<Section> over(String key, List<ThreadLine> lines, Predicate<ThreadLine> which) {
        var chosen = lines.stream().filter(which).toList();
        return chosen.isEmpty() ? Optional.empty() : Optional.of(list(key, chosen, "opinion.order.closed"));
    }

    private Section list(String key, List<ThreadLine> chosen, String order) {
        var today = clock.instant().atZone(zone).toLocalDate();
        return PageParts.part(
                Texts.text(key, chosen.size()),
                new ThreadList(chosen, today),
                PageParts.paragraph("small", Texts.text(order)));
    }

    private Section calls() {
        var calls = opinions.calls();
        var sheet = PageParts.part(Texts.text("opinion.calls", calls.size()));
        if (calls.isEmpty()) {
            sheet.add(PageParts.paragraph("empty", Texts.text("opinion.calls.none")));
        }
        calls.forEach(call -> sheet.add(call(call)));
        return sheet;
    }

    private Component call(OpenCall call) {
        var take = new Button(Texts.text("opinion.take"), click -> {
            if (opinions.take(call.id())) {
                click.getSource()
                        .getUI()
                        .ifPresent(ui -> ui.navigate(Urls.opinion(call.id().value())));
            } else {
                refresh();
            }
        });
        return new Div(
                PageParts.paragraph(
                        "call",
                        Texts.text(
                                "opinion.call",
                                Parts.advice(call.wanted()),
                                call.asker(),
                                call.hospital(),
                                DateText.of(call.dueBy()))),
                take);
    }

    private Optional<Section> fared() {
        var fared = opinions.fared();
        return fared.isEmpty()
                ? Optional.empty()
                : Optional.of(PageParts.part(
                        Texts.text("opinion.fared", fared.size()),
                        PageParts.paragraph("small", Texts.text("opinion.fared.private")),
                        OutcomeCards.of(fared, zone)));
    }

    private Optional<Section> ownWords() {
        var own = opinions.ownWords();
        return own.isEmpty()
                ? Optional.empty()
                : Optional.of(words(Texts.text("opinion.own-words", own.size()), own, false));
    }

    private Section words(String heading, List<Found> hits, boolean linked) {
        var sheet = PageParts.part(heading);
        if (hits.isEmpty()) {
            sheet.add(PageParts.paragraph("empty", Texts.text("opinion.found.none")));
        }
        hits.forEach(hit -> {
            var who = Texts.text("opinion.said-by", hit.author(), Parts.moment(hit.at(), zone));
            sheet.add(
                    linked ? new Anchor(Urls.opinion(hit.thread().value()), who) : PageParts.paragraph("small", who),
                    PageParts.paragraph("words", hit.text()));
        });
        return sheet;
    }
}
