package org.espalier.film.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.dependency.StyleSheet;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.BeforeEnterObserver;
import com.vaadin.flow.router.HasDynamicTitle;
import com.vaadin.flow.router.Menu;
import com.vaadin.flow.router.QueryParameters;
import com.vaadin.flow.router.Route;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.espalier.access.CurrentStaff;
import org.espalier.access.Role;
import org.espalier.access.Site;
import org.espalier.access.SiteService;
import org.espalier.film.FilmHappening;
import org.espalier.film.FilmOrder;
import org.espalier.film.FilmOrderId;
import org.espalier.film.FilmOrderService;
import org.espalier.film.FilmWish;
import org.espalier.film.WorklistLine;
import org.espalier.kit.DateText;
import org.espalier.kit.IdentityBanner;
import org.espalier.kit.PageParts;
import org.espalier.kit.Texts;
import org.espalier.kit.Urls;
import org.espalier.patient.Child;
import org.espalier.patient.ChildId;
import org.espalier.platform.Ids;

/** Who is to be filmed today, how, and who is not. */
@Route(Urls.WORKLIST)
@Menu(title = "film.menu.worklist", order = 25)
@StyleSheet("themes/film.css")
class WorklistView extends Composite<Div> implements BeforeEnterObserver, HasDynamicTitle {

    private final FilmOrderService orders;
    private final SiteService siteService;
    private final CurrentStaff currentStaff;
    private final Ids ids;
    private final Select<Site> hospital = new Select<>();
    private final Div answer = new Div();
    private final Div list = new Div();
    private final Paragraph question = new Paragraph();
    private LocalDate today = LocalDate.EPOCH;

    WorklistView(FilmOrderService orders, SiteService siteService, CurrentStaff currentStaff, Ids ids) {
        this.orders = orders;
        this.siteService = siteService;
        this.currentStaff = currentStaff;
        this.ids = ids;
        hospital.setLabel(Texts.text("film.hospital"));
        hospital.setItemLabelGenerator(Site::name);
        hospital.addValueChangeListener(change -> {
            if (change.isFromClient()) {
                getUI().ifPresent(ui -> ui.navigate(
                        Urls.WORKLIST,
                        QueryParameters.simple(Map.of("site", change.getValue().code()))));
            }
        });
        question.addClassName("question");
        answer.getElement().setAttribute("aria-live", "polite");
        var card = new Anchor(Urls.PATELLA_CARD, Texts.text("film.card.open"));
        card.addClassName("act");
        var head = new Div(new H1(Texts.text("film.worklist")), card);
        head.addClassName("part-head");
        getContent().addClassNames("screen", "worklist");
        getContent().add(head, question, hospital, answer, list);
    }

    @Override
    public void beforeEnter(BeforeEnterEvent event) {
        var sites = siteService.mine().stream()
                .filter(site -> Stream.of(Role.RADIOGRAPHER, Role.SURGEON, Role.NURSE)
                        .anyMatch(role -> currentStaff.has(role, site.id())))
                .toList();
        var code = event.getLocation().getQueryParameters().getSingleParameter("site");
        hospital.setItems(sites);
        hospital.setVisible(sites.size() > 1);
        hospital.setValue(sites.stream()
                .filter(site -> code.filter(site.code()::equals).isPresent())
                .findFirst()
                .orElseGet(sites::getFirst));
        refresh();
    }

    @Override
    public String getPageTitle() {
        return Texts.page("film.worklist.title");
    }

    private void refresh() {
        var site = hospital.getValue();
        today = siteService.today(site.id());
        question.setText(Texts.text("film.worklist.question", DateText.inWords(today)));
        list.removeAll();
        var lines = orders.worklist(site.id(), today);
        if (lines.isEmpty()) {
            list.add(PageParts.paragraph("empty", Texts.text("film.worklist.empty", site.name())));
        }
        lines.forEach(line -> list.add(card(line)));
    }

    private Component card(WorklistLine line) {
        var child = line.child();
        var name = IdentityBanner.name(child.who());
        var link = new Anchor(Urls.examination(child.id().value()), name);
        var who = new Span(who(child));
        var films = new Span(Texts.text("film.worklist.films", line.films()));
        films.addClassName("small");
        var card = new Section(new H2(link), who, films);
        card.addClassNames("sheet", "worklist-line");
        if (line.orders().isEmpty()) {
            card.add(new Paragraph(Texts.text("film.worklist.unsaid")));
        }
        line.orders().forEach(order -> card.add(new FilmOrderLine(order, today, name, deeds(), this::happened)));
        if (line.orders().stream().noneMatch(FilmOrder::isOpen)) {
            card.addClassName("done");
            if (isOrdering()) {
                card.add(new Button(Texts.text("film.order.ask"), click -> new OrderDialog(
                                today, line.films(), (day, wish) -> order(child.id(), day, wish))
                        .open()));
            }
        }
        return card;
    }

    private String who(Child child) {
        return child.data()
                .map(data -> Texts.text(
                        "film.worklist.who",
                        DateText.born(data.birthDate(), today),
                        data.localNumber() == null ? Texts.text("kit.not-known") : data.localNumber()))
                .orElse("");
    }

    private List<StepDialog.Deed> deeds() {
        return has(Role.RADIOGRAPHER) || has(Role.SURGEON)
                ? List.of(StepDialog.Deed.TAKEN, StepDialog.Deed.REJECTED, StepDialog.Deed.NOT_TAKEN)
                : List.of(StepDialog.Deed.NOT_TAKEN);
    }

    private boolean isOrdering() {
        return has(Role.SURGEON) || has(Role.NURSE);
    }

    private boolean has(Role role) {
        return currentStaff.has(role, hospital.getValue().id());
    }

    private void order(ChildId child, LocalDate day, FilmWish wish) {
        orders.order(new FilmOrderId(ids.next()), child, day, wish);
        say("film.order.done");
    }

    private void happened(FilmOrder order, FilmHappening what) {
        boolean kept = orders.happened(order.id(), ids.next(), what);
        say(kept ? "film.step.done" : "film.step.ended");
    }

    private void say(String key) {
        answer.removeAll();
        answer.add(PageParts.paragraph("notice", Texts.text(key)));
        refresh();
    }
}
