package org.espalier.treatment.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.dependency.StyleSheet;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.BeforeEnterObserver;
import com.vaadin.flow.router.HasDynamicTitle;
import com.vaadin.flow.router.Menu;
import com.vaadin.flow.router.Route;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Optional;
import org.espalier.access.Role;
import org.espalier.access.Site;
import org.espalier.access.SiteService;
import org.espalier.kit.DateText;
import org.espalier.kit.IdentityBanner;
import org.espalier.kit.PageParts;
import org.espalier.kit.Texts;
import org.espalier.kit.Urls;
import org.espalier.stock.Coverage;
import org.espalier.treatment.TheatreCase;
import org.espalier.treatment.TheatreService;

/**
 * Who is in theatre on a day, on which side and physis, with which plate on which side of the bone: large, for
 * printing.
 */
@Route(Urls.THEATRE)
@Menu(title = "treatment.menu.theatre", order = 5)
@StyleSheet("themes/patient.css")
@StyleSheet("themes/treatment.css")
class TheatreView extends Composite<Div> implements BeforeEnterObserver, HasDynamicTitle {

    private final TheatreService theatre;
    private final SiteService sites;
    private final Desk desk;

    TheatreView(TheatreService theatre, SiteService sites, Desk desk) {
        this.theatre = theatre;
        this.sites = sites;
        this.desk = desk;
    }

    @Override
    public String getPageTitle() {
        return Texts.page("treatment.theatre.title");
    }

    @Override
    public void beforeEnter(BeforeEnterEvent event) {
        getContent().removeAll();
        getContent().addClassNames("screen", "theatre");
        getContent().add(new H1(Texts.text("treatment.theatre")));
        var asked = event.getLocation()
                .getQueryParameters()
                .getSingleParameter("day")
                .flatMap(TheatreView::day);
        sites.mine().stream()
                .filter(site -> desk.staff().has(Role.SURGEON, site.id())
                        || desk.staff().has(Role.NURSE, site.id()))
                .forEach(site -> show(site, asked.orElseGet(() -> sites.today(site.id()))));
    }

    private void show(Site site, LocalDate day) {
        var section = new Section(new H2(Texts.text("treatment.theatre.at", site.name(), DateText.inWords(day))));
        section.add(ways(site, day));
        var cases = theatre.list(site.id(), day);
        if (cases.isEmpty()) {
            section.add(PageParts.paragraph("empty", Texts.text("treatment.theatre.none", DateText.inWords(day))));
        }
        var coverage = desk.reservations().coverage(site.id());
        cases.forEach(one -> section.add(shown(one, day, coverage)));
        getContent().add(section);
    }

    private Component ways(Site site, LocalDate day) {
        var print = new Button(Texts.text("treatment.print"));
        print.addClickListener(click -> print.getElement().executeJs("window.print()"));
        var ways = new Div(
                new Anchor(address(day.minusDays(1)), Texts.text("treatment.theatre.before")),
                new Anchor(address(day.plusDays(1)), Texts.text("treatment.theatre.after")),
                new Anchor(address(day.plusDays(7)), Texts.text("treatment.theatre.week")));
        theatre.next(site.id(), day)
                .ifPresent(next -> ways.add(
                        new Anchor(address(next), Texts.text("treatment.theatre.next", DateText.inWords(next)))));
        ways.add(print);
        ways.addClassNames("actions", "not-printed");
        return ways;
    }

    private static Component shown(TheatreCase one, LocalDate day, List<Coverage.Met> coverage) {
        var child = one.child();
        var name = new Div(new IdentityBanner(child.who(), day));
        var box = new Section(name, new PlannedLarge(one.plans()));
        box.addClassNames("sheet", "theatre-case");
        one.standing().forEach(plan -> box.add(new ReadyLines(plan, coverage)));
        var check = new Anchor(Urls.theatreCheck(child.id().value()), Texts.text("treatment.check"));
        var record = new Anchor(Urls.recordProcedure(child.id().value()), Texts.text("treatment.record"));
        var links = new Div(check, record);
        links.addClassNames("links", "not-printed");
        box.add(links);
        return box;
    }

    private static String address(LocalDate day) {
        return Urls.THEATRE + "?day=" + day;
    }

    private static Optional<LocalDate> day(String text) {
        try {
            return Optional.of(LocalDate.parse(text));
        } catch (DateTimeParseException notADay) {
            return Optional.empty();
        }
    }
}
