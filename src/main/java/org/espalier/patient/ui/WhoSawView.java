package org.espalier.patient.ui;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.dependency.StyleSheet;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.html.UnorderedList;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.BeforeEnterObserver;
import com.vaadin.flow.router.HasDynamicTitle;
import com.vaadin.flow.router.Route;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Collection;
import java.util.Map;
import java.util.stream.Collectors;
import org.espalier.access.AccessLogService;
import org.espalier.access.Look;
import org.espalier.access.Site;
import org.espalier.access.SiteId;
import org.espalier.access.SiteService;
import org.espalier.access.WhoSaw;
import org.espalier.kit.ChildHeader;
import org.espalier.kit.DateText;
import org.espalier.kit.PageParts;
import org.espalier.kit.Texts;
import org.espalier.patient.Child;
import org.espalier.patient.PatientService;
import org.jspecify.annotations.Nullable;

/** Who saw this child? Each person once, then every look. */
@Route("child/:child/seen")
@StyleSheet("themes/patient.css")
@StyleSheet("themes/admin.css")
class WhoSawView extends Composite<Div> implements BeforeEnterObserver, HasDynamicTitle {

    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm:ss");

    private final PatientService patients;
    private final AccessLogService log;
    private final SiteService sites;

    WhoSawView(PatientService patients, AccessLogService log, SiteService sites) {
        this.patients = patients;
        this.log = log;
        this.sites = sites;
    }

    @Override
    public void beforeEnter(BeforeEnterEvent event) {
        getContent().removeAll();
        ChildParameter.open(event, patients, "who saw").ifPresent(this::show);
    }

    @Override
    public String getPageTitle() {
        return Texts.page("patient.seen.title");
    }

    private void show(Child child) {
        var today = sites.today(child.site());
        var question = PageParts.paragraph("question", Texts.text("patient.seen.question"));
        var body = new Div(new H1(Texts.text("patient.seen")), question);
        body.addClassName("screen");
        getContent().add(new ChildHeader(child.id().value(), child.who(), today, ChildHeader.Page.SEEN), body);
        var names = sites.all().stream().collect(Collectors.toMap(Site::id, site -> site));
        var lines = new Lines(names, sites.get(child.site()).zone());
        log.whoSaw(child.id().value())
                .ifPresentOrElse(
                        seen -> body.add(lines.people(seen), lines.looks(seen)),
                        () -> body.add(small("patient.seen.nobody")));
    }

    private static Paragraph small(String key, Object... arguments) {
        var paragraph = PageParts.paragraph("small", Texts.text(key, arguments));
        return paragraph;
    }

    /** The two lists, in the time of the child's hospital. */
    private record Lines(Map<SiteId, Site> sites, ZoneId zone) {

        Section people(WhoSaw seen) {
            var list = list();
            seen.people()
                    .forEach(person -> list.add(new ListItem(
                            name(person.who()),
                            new Span(at(person.worksAt())),
                            new Span(Texts.text(
                                    "patient.seen.times",
                                    person.times(),
                                    time(person.first()),
                                    time(person.last()))))));
            return PageParts.part(Texts.text("patient.seen.people"), small("patient.seen.people.order"), list);
        }

        Section looks(WhoSaw seen) {
            var list = list();
            seen.looks().forEach(look -> list.add(line(look)));
            var order = small(
                    seen.complete() ? "patient.seen.looks.order" : "patient.seen.looks.more",
                    seen.looks().size(),
                    zone.getId());
            return PageParts.part(Texts.text("patient.seen.looks"), order, list);
        }

        private ListItem line(Look look) {
            return new ListItem(
                    new Span(time(look.at())),
                    name(look.who()),
                    new Span(Texts.of(look.deed()) + ": " + look.subject()),
                    new Span(Texts.text(look.sealed() ? "access.log.sealed" : "access.log.not-sealed")));
        }

        private String time(Instant at) {
            var there = at.atZone(zone);
            return DateText.of(there.toLocalDate()) + " " + CLOCK.format(there);
        }

        private String at(Collection<SiteId> worked) {
            return worked.isEmpty()
                    ? Texts.text("patient.seen.no-hospital")
                    : sites.values().stream()
                            .filter(site -> worked.contains(site.id()))
                            .map(Site::name)
                            .sorted()
                            .collect(Collectors.joining(", "));
        }

        private static Span name(@Nullable String who) {
            var name = new Span(who == null ? Texts.text("access.log.house") : who);
            name.addClassName("name");
            return name;
        }

        private static UnorderedList list() {
            var list = new UnorderedList();
            list.addClassName("admin-list");
            return list;
        }
    }
}
