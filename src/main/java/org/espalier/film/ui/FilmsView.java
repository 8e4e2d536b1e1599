package org.espalier.film.ui;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.dependency.StyleSheet;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.BeforeEnterObserver;
import com.vaadin.flow.router.HasDynamicTitle;
import com.vaadin.flow.router.Menu;
import com.vaadin.flow.router.QueryParameters;
import com.vaadin.flow.router.Route;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.espalier.access.CurrentStaff;
import org.espalier.access.Role;
import org.espalier.access.Site;
import org.espalier.access.SiteService;
import org.espalier.film.FilmService;
import org.espalier.film.TrayItem;
import org.espalier.kit.PageParts;
import org.espalier.kit.Texts;
import org.espalier.kit.Urls;
import org.espalier.patient.PatientService;

/** Films come in here, and those that found no child by themselves wait here for one. */
@Route(Urls.FILMS)
@Menu(title = "film.menu.films", order = 20)
@StyleSheet("themes/film.css")
class FilmsView extends Composite<Div> implements BeforeEnterObserver, HasDynamicTitle {

    private final FilmService films;
    private final PatientService patients;
    private final SiteService siteService;
    private final CurrentStaff currentStaff;
    private final Select<Site> hospital = new Select<>();
    private final Div incoming = new Div();
    private final FilmTray waiting =
            new FilmTray(new FilmTray.Words("film.waiting", "film.waiting.order", "film.waiting.empty"), this::assign);
    private final FilmTray aside =
            new FilmTray(new FilmTray.Words("film.aside", "film.aside.order", "film.aside.empty"), this::assign);

    FilmsView(FilmService films, PatientService patients, SiteService siteService, CurrentStaff currentStaff) {
        this.films = films;
        this.patients = patients;
        this.siteService = siteService;
        this.currentStaff = currentStaff;
        hospital.setLabel(Texts.text("film.hospital"));
        hospital.setItemLabelGenerator(Site::name);
        hospital.addValueChangeListener(change -> {
            if (change.isFromClient()) {
                getUI().ifPresent(ui -> ui.navigate(
                        Urls.FILMS,
                        QueryParameters.simple(Map.of("site", change.getValue().code()))));
            }
        });
        var question = PageParts.paragraph("question", Texts.text("film.question"));
        getContent().addClassNames("screen", "films");
        getContent().add(new H1(Texts.text("film.films")), question, hospital, incoming, waiting, aside);
    }

    @Override
    public void beforeEnter(BeforeEnterEvent event) {
        var sites = sites();
        var code = event.getLocation().getQueryParameters().getSingleParameter("site");
        var here = sites.stream()
                .filter(site -> code.filter(site.code()::equals).isPresent())
                .findFirst()
                .orElseGet(sites::getFirst);
        hospital.setItems(sites);
        hospital.setVisible(sites.size() > 1);
        hospital.setValue(here);
        incoming.removeAll();
        incoming.add(new FilmUpload(films, here.id(), this::refresh));
        refresh();
    }

    @Override
    public String getPageTitle() {
        return Texts.page("film.films.title");
    }

    private List<Site> sites() {
        return siteService.mine().stream()
                .filter(site -> Stream.of(Role.RADIOGRAPHER, Role.SURGEON, Role.NURSE)
                        .anyMatch(role -> currentStaff.has(role, site.id())))
                .toList();
    }

    private void refresh() {
        var tray = films.tray(hospital.getValue().id());
        waiting.show(tray.stream().filter(item -> item.aside().isEmpty()).toList(), hospital.getValue());
        aside.show(tray.stream().filter(item -> item.aside().isPresent()).toList(), hospital.getValue());
        aside.setVisible(tray.stream().anyMatch(item -> item.aside().isPresent()));
    }

    private void assign(TrayItem item) {
        var site = hospital.getValue().id();
        new AssignDialog(films, patients, site, siteService.today(site), item, this::refresh).open();
    }
}
