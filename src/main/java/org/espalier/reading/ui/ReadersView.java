package org.espalier.reading.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.dependency.StyleSheet;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.UnorderedList;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.BeforeEnterObserver;
import com.vaadin.flow.router.HasDynamicTitle;
import com.vaadin.flow.router.Menu;
import com.vaadin.flow.router.QueryParameters;
import com.vaadin.flow.router.Route;
import java.util.List;
import java.util.Map;
import org.espalier.access.CurrentStaff;
import org.espalier.access.Role;
import org.espalier.access.Site;
import org.espalier.access.SiteService;
import org.espalier.kit.DateText;
import org.espalier.kit.PageParts;
import org.espalier.kit.Texts;
import org.espalier.kit.Urls;
import org.espalier.reading.ReadersService;
import org.espalier.reading.UnpairedFilm;

/** How far the readers of this hospital agree, and which films wait for a second, blind reading. */
@Route(Urls.READERS)
@Menu(title = "reading.menu.readers", order = 70)
@StyleSheet("themes/readers.css")
class ReadersView extends Composite<Div> implements BeforeEnterObserver, HasDynamicTitle {

    private final ReadersService readers;
    private final SiteService sites;
    private final CurrentStaff staff;
    private final Select<Site> hospital = new Select<>();
    private final Div shown = new Div();

    ReadersView(ReadersService readers, SiteService sites, CurrentStaff staff) {
        this.readers = readers;
        this.sites = sites;
        this.staff = staff;
        hospital.setLabel(Texts.text("reading.readers.hospital"));
        hospital.setItemLabelGenerator(Site::name);
        hospital.addValueChangeListener(change -> {
            if (change.isFromClient()) {
                getUI().ifPresent(ui -> ui.navigate(
                        Urls.READERS,
                        QueryParameters.simple(Map.of("site", change.getValue().code()))));
            }
        });
        var question = PageParts.paragraph("question", Texts.text("reading.readers.question"));
        getContent().addClassNames("screen", "readers");
        getContent().add(new H1(Texts.text("reading.readers")), question, hospital, shown);
    }

    @Override
    public String getPageTitle() {
        return Texts.page("reading.readers.title");
    }

    @Override
    public void beforeEnter(BeforeEnterEvent event) {
        var mine = sites.mine().stream()
                .filter(site -> staff.has(Role.SURGEON, site.id()) || staff.has(Role.AUDITOR, site.id()))
                .toList();
        var code = event.getLocation().getQueryParameters().getSingleParameter("site");
        var here = mine.stream()
                .filter(site -> code.filter(site.code()::equals).isPresent())
                .findFirst()
                .orElseGet(mine::getFirst);
        hospital.setItems(mine);
        hospital.setVisible(mine.size() > 1);
        hospital.setValue(here);
        show(here);
    }

    private void show(Site site) {
        shown.removeAll();
        shown.add(new AgreementTable(readers.agreement(site.id())), note("reading.readers.how"));
        if (staff.has(Role.SURGEON, site.id())) {
            shown.add(new H2(Texts.text("reading.readers.waiting")), note("reading.readers.blind"));
            shown.add(waiting(readers.unpaired(site.id())));
        }
    }

    private static Component waiting(List<UnpairedFilm> films) {
        if (films.isEmpty()) {
            return note("reading.readers.none-waiting");
        }
        var list = new UnorderedList();
        films.forEach(film -> list.add(new ListItem(new Anchor(
                Urls.film(film.film().value()) + "?" + FilmRoomView.BLIND + "="
                        + film.reading().value(),
                Texts.text(
                        "reading.readers.film",
                        film.takenOn().map(DateText::of).orElseGet(() -> Texts.text("reading.caption.no-day")),
                        film.readerName())))));
        return list;
    }

    private static Paragraph note(String key) {
        return new Paragraph(Texts.text(key));
    }
}
