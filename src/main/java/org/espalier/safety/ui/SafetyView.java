package org.espalier.safety.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.button.ButtonVariant;
import com.vaadin.flow.component.combobox.ComboBox;
import com.vaadin.flow.component.dependency.StyleSheet;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.html.UnorderedList;
import com.vaadin.flow.component.textfield.TextArea;
import com.vaadin.flow.component.textfield.TextField;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.BeforeEnterObserver;
import com.vaadin.flow.router.HasDynamicTitle;
import com.vaadin.flow.router.Menu;
import com.vaadin.flow.router.QueryParameters;
import com.vaadin.flow.router.Route;
import java.time.ZoneOffset;
import java.util.Map;
import java.util.UUID;
import org.espalier.access.CurrentStaff;
import org.espalier.access.Role;
import org.espalier.access.Site;
import org.espalier.access.SiteService;
import org.espalier.kit.Address;
import org.espalier.kit.DateText;
import org.espalier.kit.PageParts;
import org.espalier.kit.Texts;
import org.espalier.kit.Urls;
import org.espalier.safety.SafetyNotice;
import org.espalier.safety.SafetyService;
import org.espalier.stock.CatalogueService;
import org.espalier.stock.Lot;
import org.espalier.stock.LotId;

/** Which lots are held, and who is still to be told? A new notice holds a lot everywhere at once. */
@Route(Urls.SAFETY)
@Menu(title = "safety.menu", order = 45)
@StyleSheet("themes/patient.css")
@StyleSheet("themes/stock.css")
class SafetyView extends Composite<Div> implements BeforeEnterObserver, HasDynamicTitle {

    private final SafetyService safety;
    private final CatalogueService catalogue;
    private final SiteService sites;
    private final CurrentStaff currentStaff;

    SafetyView(SafetyService safety, CatalogueService catalogue, SiteService sites, CurrentStaff currentStaff) {
        this.safety = safety;
        this.catalogue = catalogue;
        this.sites = sites;
        this.currentStaff = currentStaff;
        getContent().addClassNames("screen", "stock");
    }

    @Override
    public void beforeEnter(BeforeEnterEvent event) {
        getContent().removeAll();
        var body = new Div(PageParts.part(Texts.text("safety.notices"), notices()));
        body.addClassName("parts");
        getContent()
                .add(new H1(Texts.text("safety.title-of-screen")), SafetyPage.places(currentStaff, Urls.SAFETY), body);
        sites.mine().stream()
                .filter(site ->
                        currentStaff.has(Role.STOREKEEPER, site.id()) || currentStaff.has(Role.SURGEON, site.id()))
                .findFirst()
                .ifPresent(site -> body.add(form(
                        site,
                        event.getLocation()
                                .getQueryParameters()
                                .getSingleParameter("lot")
                                .orElse(""))));
        getContent().add(PageParts.caution("safety.caution"));
    }

    @Override
    public String getPageTitle() {
        return Texts.page("safety.title");
    }

    private Component notices() {
        var all = safety.all();
        if (all.isEmpty()) {
            return PageParts.empty("safety.notices.none");
        }
        var list = new UnorderedList();
        all.forEach(notice -> list.add(line(notice)));
        return list;
    }

    private static ListItem line(SafetyNotice notice) {
        var link = new Anchor(
                Urls.safetyNotice(notice.id()), Texts.text("safety.lot-of", notice.lotNumber(), notice.product()));
        var state = notice.closedOn()
                .map(on -> Texts.text(
                        "safety.closed", DateText.of(on.atZone(ZoneOffset.UTC).toLocalDate())))
                .orElseGet(() -> Texts.text(
                        "safety.open-since",
                        DateText.of(notice.openedOn().atZone(ZoneOffset.UTC).toLocalDate())));
        var said = new Span(" " + state);
        said.setClassName("harm", notice.isOpen());
        return new ListItem(link, said);
    }

    private Component form(Site site, String asked) {
        var lot = new ComboBox<Lot>(Texts.text("safety.lot"));
        lot.setItems(query -> catalogue.searchLots(query.getFilter().orElse("")).stream()
                .skip(query.getOffset())
                .limit(query.getLimit()));
        lot.setItemLabelGenerator(one -> Texts.text(
                "safety.lot-of",
                one.number(),
                catalogue.product(one.product()).map(p -> p.data().name()).orElse("")));
        lot.setHelperText(Texts.text("safety.lot.help"));
        lot.setErrorMessage(Texts.text("safety.lot.missing"));
        Address.id(asked).map(LotId::new).flatMap(catalogue::lot).ifPresent(lot::setValue);
        var source = new TextField(Texts.text("safety.source"));
        source.setMaxLength(200);
        source.setErrorMessage(Texts.text("safety.source.missing"));
        var why = new TextArea(Texts.text("safety.why"));
        why.setMaxLength(1000);
        why.setErrorMessage(Texts.text("safety.why.missing"));
        var answer = new Div();
        answer.getElement().setAttribute("role", "alert");
        var open = new Button(Texts.text("safety.open"), click -> {
            lot.setInvalid(lot.isEmpty());
            source.setInvalid(source.getValue().strip().length() < 2);
            why.setInvalid(why.getValue().strip().length() < 3);
            if (!lot.isInvalid() && !source.isInvalid() && !why.isInvalid()) {
                open(site, lot.getValue(), source.getValue(), why.getValue(), answer);
            }
        });
        open.addThemeVariants(ButtonVariant.PRIMARY);
        var fields = new Div(lot, source, why);
        fields.addClassName("form-fields");
        return PageParts.part(
                Texts.text("safety.new"), new Paragraph(Texts.text("safety.new.what")), fields, answer, open);
    }

    private void open(Site site, Lot lot, String source, String why, Div answer) {
        var id = UUID.randomUUID();
        if (safety.open(id, lot.id(), site.id(), source, why).isPresent()) {
            UI.getCurrent().navigate(Urls.SAFETY_NOTICE, QueryParameters.simple(Map.of("notice", id.toString())));
        } else {
            answer.addClassNames("notice", "harm");
            answer.setText(Texts.text("safety.open-already"));
        }
    }
}
