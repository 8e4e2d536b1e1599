package org.espalier.followup.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.dependency.StyleSheet;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.Nav;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.html.UnorderedList;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.BeforeEnterObserver;
import com.vaadin.flow.router.HasDynamicTitle;
import com.vaadin.flow.router.Menu;
import com.vaadin.flow.router.Route;
import java.util.List;
import java.util.Optional;
import org.espalier.access.Site;
import org.espalier.access.SiteService;
import org.espalier.followup.Attempt;
import org.espalier.followup.Happening;
import org.espalier.followup.RecallService;
import org.espalier.followup.SharedCareService;
import org.espalier.followup.TransferService;
import org.espalier.followup.Visit;
import org.espalier.followup.VisitOutcome;
import org.espalier.followup.VisitService;
import org.espalier.kit.DateText;
import org.espalier.kit.Texts;
import org.espalier.kit.Urls;
import org.espalier.platform.Drafts;

/** Who is late, who has no date, what was tried, what is next? The hospital stands in the address; without one, all. */
@Route(Urls.RECALL)
@Menu(title = "followup.menu.recall", order = 5)
@StyleSheet("themes/patient.css")
@StyleSheet("themes/followup.css")
class RecallView extends Composite<Div> implements BeforeEnterObserver, HasDynamicTitle {
    private static final int MOST_PRINTED = 2_000;

    private final RecallService recall;
    private final VisitService visits;
    private final TransferService transfers;
    private final SharedCareService sharedCare;
    private final SiteService siteService;
    private final CareSites sites;
    private final transient Drafts drafts;
    private final RecallList list;
    private final Span said = new Span();
    private final Span keys = new Span(Texts.text("followup.recall.keys"));
    private final Button more = new Button(Texts.text("followup.more"), click -> showMore());
    private List<Site> shownSites = List.of();
    private int shown;

    RecallView(
            RecallService recall,
            VisitService visits,
            TransferService transfers,
            SharedCareService sharedCare,
            SiteService siteService,
            CareSites sites,
            Drafts drafts) {
        this.recall = recall;
        this.transfers = transfers;
        this.sharedCare = sharedCare;
        this.siteService = siteService;
        this.sites = sites;
        this.drafts = drafts;
        this.visits = visits;
        list = new RecallList(drafts, new RecallRow.Deeds(this::tried, this::happens));
        keys.addClassNames("no-print", "keys");
        more.addClassName("no-print");
        said.getElement().setAttribute("aria-live", "polite");
        getContent().addClassNames("screen", "recall");
    }

    @Override
    public void beforeEnter(BeforeEnterEvent event) {
        var asked = event.getLocation().getQueryParameters().getSingleParameter("site");
        shownSites = asked.flatMap(sites::of).map(List::of).orElseGet(sites::all);
        getContent().removeAll();
        var bookings = new Anchor(Urls.BOOKINGS, Texts.text("followup.bookings"));
        var ways = new Div(bookings, print());
        ways.addClassNames("actions", "no-print");
        var head = new Div(new H1(Texts.text("followup.recall")), ways);
        head.addClassName("screen-head");
        var question = new Paragraph(said, keys);
        question.addClassName("question");
        getContent().add(head, question);
        if (sites.all().size() > 1) {
            getContent().add(places(asked.flatMap(sites::of).map(Site::code).orElse("")));
        }
        getContent().add(list, more);
        getContent()
                .add(
                        new TransferList(transfers, siteService, sites, drafts),
                        new SharedCareList(sharedCare, siteService, sites, drafts));
        shownSites.forEach(site -> getContent().add(new ReminderList(recall, site, siteService.today(site.id()))));
        var caution = new Paragraph(Texts.text("followup.recall.caution"));
        caution.addClassName("caution");
        getContent().add(caution);
        show();
    }

    @Override
    public String getPageTitle() {
        return Texts.page("followup.recall.title");
    }

    /** On paper stand all of them, not only those shown so far. */
    private Component print() {
        var print = new Button(Texts.text("followup.print"));
        print.addClickListener(click -> {
            while (more.isVisible() && shown < MOST_PRINTED) {
                showMore();
            }
            print.getElement().executeJs("window.print()");
        });
        return print;
    }

    private void tried(Visit visit, Attempt attempt) {
        recall.tried(visit, attempt);
        goOn();
    }

    /** Why it was not written down, in words; empty when it was. */
    private Optional<String> happens(Visit visit, Happening happening) {
        boolean done = visits.record(visit, happening) instanceof VisitOutcome.Done;
        if (done) {
            goOn();
        }
        return done ? Optional.empty() : Optional.of(Texts.text("followup.changed-meanwhile"));
    }

    private Nav places(String here) {
        var places = new UnorderedList();
        places.add(place("", Texts.text("followup.all-hospitals"), here));
        sites.all().forEach(site -> places.add(place(site.code(), site.name(), here)));
        var nav = new Nav(places);
        nav.addClassNames("child-pages", "no-print");
        nav.setAriaLabel(Texts.text("followup.hospitals"));
        return nav;
    }

    private static ListItem place(String code, String name, String here) {
        var link = new Anchor(code.isEmpty() ? Urls.RECALL : Urls.RECALL + "?site=" + code, name);
        if (code.equals(here)) {
            link.getElement().setAttribute("aria-current", "page");
        }
        return new ListItem(link);
    }

    private void show() {
        var ids = shownSites.stream().map(Site::id).toList();
        var page = recall.late(ids, 0);
        shown = page.lines().size();
        list.show(page.lines(), shownSites);
        more.setVisible(page.all() > shown);
        keys.setVisible(shown > 1);
        var day = shownSites.isEmpty() ? "" : DateText.inWords(siteService.today(ids.getFirst()));
        said.setText(Texts.text("followup.recall.said", page.all(), day));
    }

    /** Shows what changed and leaves the keyboard in its place. */
    private void goOn() {
        int place = list.place();
        show();
        list.goOn(place);
    }

    private void showMore() {
        var ids = shownSites.stream().map(Site::id).toList();
        var next = recall.late(ids, shown);
        shown += next.lines().size();
        list.append(next.lines(), shownSites);
        more.setVisible(next.all() > shown);
    }
}
