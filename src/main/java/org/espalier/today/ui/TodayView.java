package org.espalier.today.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.dependency.StyleSheet;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.BeforeEnterObserver;
import com.vaadin.flow.router.HasDynamicTitle;
import com.vaadin.flow.router.Menu;
import com.vaadin.flow.router.Route;
import java.time.LocalDate;
import java.util.List;
import org.espalier.access.Permissions;
import org.espalier.kit.DateText;
import org.espalier.kit.Texts;
import org.espalier.kit.Urls;
import org.espalier.opinion.ThreadLine;
import org.espalier.science.quantity.Age;
import org.espalier.today.OpenDraft;
import org.espalier.today.SiteToday;
import org.espalier.today.TodayService;
import org.espalier.today.WithoutFilm;

/** What must I do now? What waits at each hospital, each line a way to it. */
@Route(Urls.TODAY)
@Menu(title = "today.menu", order = 0)
@StyleSheet("themes/today.css")
class TodayView extends Composite<Div> implements BeforeEnterObserver, HasDynamicTitle {

    private final TodayService service;
    private final Permissions permissions;
    private final EmergencyLines emergencies;
    private final ShortLines shortages;

    TodayView(TodayService service, Permissions permissions, EmergencyLines emergencies, ShortLines shortages) {
        this.service = service;
        this.permissions = permissions;
        this.emergencies = emergencies;
        this.shortages = shortages;
        getContent().addClassNames("screen", "today");
    }

    @Override
    public void beforeEnter(BeforeEnterEvent event) {
        getContent().removeAll();
        getContent().add(new H1(Texts.text("today.title")));
        if (permissions.allowsService("TodayService.askedOfMe")) {
            var asked = service.askedOfMe();
            if (!asked.isEmpty()) {
                getContent().add(askedOfMe(asked));
            }
        }
        var sites = service.open();
        var told = emergencies.list();
        var lacking = shortages.list();
        getContent().add(told, lacking);
        if (sites.isEmpty() && !told.isVisible() && !lacking.isVisible()) {
            getContent().add(paragraph("empty", Texts.text("today.nobody")));
        }
        sites.forEach(site -> show(site, sites.size() > 1));
    }

    @Override
    public String getPageTitle() {
        return Texts.page("today.page");
    }

    private void show(SiteToday site, boolean several) {
        getContent()
                .add(paragraph(
                        "question",
                        several
                                ? Texts.text(
                                        "today.at",
                                        DateText.inWords(site.today()),
                                        site.site().name())
                                : DateText.inWords(site.today())));
        if (site.isEmpty()) {
            getContent().add(paragraph("empty", Texts.text("today.nothing")));
            return;
        }
        var parts = new Div();
        CareLists.of(site.care(), site.today()).forEach(parts::add);
        parts.add(toRead(site), tray(site), drafts(site), withoutFilm(site));
        parts.addClassName("columns");
        getContent().add(parts);
    }

    private static Component askedOfMe(List<ThreadLine> asked) {
        var list = new WaitingList(Texts.text("today.asked", asked.size()));
        asked.forEach(line -> list.add(
                Urls.opinion(line.id().value()),
                Texts.text(
                        line.reminded() ? "today.asked.reminded" : "today.asked.line",
                        line.asker(),
                        line.hospital(),
                        DateText.of(line.dueBy()),
                        line.question())));
        return list.closed(Texts.text("today.asked.order"), 0);
    }

    private static Component toRead(SiteToday site) {
        var list = new WaitingList(Texts.text("today.to-read", site.toRead().all()));
        site.toRead()
                .shown()
                .forEach(film -> list.add(
                        Urls.film(film.film().value()),
                        film.child(),
                        film.takenOn()
                                .map(day -> Texts.text("today.taken", DateText.of(day), ago(day, site.today())))
                                .orElseGet(() -> Texts.text("today.taken.unknown"))));
        return list.closed(Texts.text("today.to-read.order"), site.toRead().further());
    }

    private static Component tray(SiteToday site) {
        var list = new WaitingList(
                Texts.text("today.tray", site.tray().unmatched() + site.tray().aside()));
        if (site.tray().unmatched() > 0) {
            list.add(Urls.FILMS, Texts.text("today.tray.unmatched", site.tray().unmatched()));
        }
        if (site.tray().aside() > 0) {
            list.add(Urls.FILMS, Texts.text("today.tray.aside", site.tray().aside()));
        }
        return list.closed("", 0);
    }

    private static Component withoutFilm(SiteToday site) {
        var list = new WaitingList(
                Texts.text("today.without-film", site.withoutFilm().all()));
        site.withoutFilm()
                .shown()
                .forEach(child -> list.add(
                        Urls.course(child.child().id().value()), child.child(), lastFilm(child, site.today())));
        var order = Texts.text("today.without-film.order", TodayService.LONG_WITHOUT_FILM.getMonths());
        return list.closed(order, site.withoutFilm().further());
    }

    private static Component drafts(SiteToday site) {
        var list = new WaitingList(Texts.text("today.drafts", site.drafts().size()));
        site.drafts().forEach(draft -> {
            var day = DateText.of(LocalDate.ofInstant(draft.savedAt(), site.zone()));
            var what = Texts.text("today.draft", Texts.of(draft.kind()), day);
            draft.child()
                    .ifPresentOrElse(
                            child -> list.add(url(draft), child, what),
                            () -> list.add(url(draft), Texts.text("today.draft.new", draft.typedName(), what)));
        });
        return list.closed("", 0);
    }

    private static String url(OpenDraft draft) {
        var of = draft.child().map(child -> child.id().value()).orElse(draft.subject());
        return switch (draft.kind()) {
            case READING -> Urls.film(draft.subject());
            case CHILD_NEW -> Urls.NEW_CHILD + "?child=" + of;
            case CHILD_EDIT -> Urls.editChild(of);
            case DIAGNOSIS, BODY_SIZE, BONE_AGE, VISIT, STAGE, LAB, BONE_DISEASE, IMAGING -> Urls.examination(of);
            case PROCEDURE -> Urls.recordProcedure(of);
            case ATTEMPT,
                    FAMILY,
                    NEXT_VISIT_DATE,
                    NEXT_VISIT_NOT_BROUGHT,
                    NEXT_VISIT_GIVEN_UP,
                    NEXT_VISIT_END,
                    NEXT_VISIT_RESUME,
                    SHARED_CARE,
                    TRANSFER -> Urls.visits(of);
        };
    }

    private static String lastFilm(WithoutFilm child, LocalDate today) {
        return child.lastFilm()
                .map(day -> Texts.text("today.last-film", DateText.of(day), ago(day, today)))
                .orElseGet(() -> Texts.text("today.no-film"));
    }

    /** How long ago, in the words of an age; a day still to come is not. */
    private static String ago(LocalDate day, LocalDate today) {
        return DateText.of(Age.between(day.isAfter(today) ? today : day, today));
    }

    private static Paragraph paragraph(String name, String text) {
        var paragraph = new Paragraph(text);
        paragraph.addClassName(name);
        return paragraph;
    }
}
