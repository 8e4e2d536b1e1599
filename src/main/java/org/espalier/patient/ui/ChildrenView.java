package org.espalier.patient.ui;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.dependency.StyleSheet;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.Autocomplete;
import com.vaadin.flow.component.textfield.TextField;
import com.vaadin.flow.data.value.ValueChangeMode;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.BeforeEnterObserver;
import com.vaadin.flow.router.HasDynamicTitle;
import com.vaadin.flow.router.Menu;
import com.vaadin.flow.router.QueryParameters;
import com.vaadin.flow.router.Route;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.espalier.access.Permissions;
import org.espalier.access.Site;
import org.espalier.access.SiteService;
import org.espalier.kit.Texts;
import org.espalier.kit.Urls;
import org.espalier.patient.Child;
import org.espalier.patient.ChildOrder;
import org.espalier.patient.PatientService;

/**
 * Finds a child, or lists those of a hospital. Hospital and order stand in the address; what is typed does not, as
 * addresses are written into histories and logs.
 */
@Route(Urls.CHILDREN)
@Menu(title = "patient.menu.children", order = 10)
@StyleSheet("themes/patient.css")
class ChildrenView extends Composite<Div> implements BeforeEnterObserver, HasDynamicTitle {

    private final PatientService patients;
    private final SiteService siteService;
    private final ClinicalSites sites;
    private final TextField wanted = new TextField(Texts.text("patient.find"));
    private final Select<Site> hospital = new Select<>();
    private final Select<ChildOrder> order = new Select<>();
    private final Paragraph said = new Paragraph();
    private final ChildLinks list = new ChildLinks();
    private final Div empty = new Div();
    private final Button more = new Button(Texts.text("patient.more"), click -> showMore());
    private int shown;

    ChildrenView(PatientService patients, SiteService siteService, ClinicalSites sites, Permissions permissions) {
        this.patients = patients;
        this.siteService = siteService;
        this.sites = sites;
        setUpFields();
        said.addClassName("question");
        said.getElement().setAttribute("aria-live", "polite");
        empty.addClassName("empty");
        empty.getElement().setAttribute("aria-live", "polite");
        var register = new Anchor(Urls.NEW_CHILD, Texts.text("patient.register"));
        register.addClassName("act");
        var head = new Div(new H1(Texts.text("patient.children")), register);
        head.addClassName("screen-head");
        var elsewhere = new Anchor(Urls.EMERGENCY, Texts.text("patient.elsewhere"));
        elsewhere.setVisible(permissions.allowsRoute(Urls.EMERGENCY));
        var fields = new Div(wanted, hospital, order);
        fields.addClassName("find-fields");
        getContent().addClassNames("screen", "children");
        getContent().add(head, fields, said, list, empty, more, elsewhere);
    }

    @Override
    public void beforeEnter(BeforeEnterEvent event) {
        var asked = event.getLocation().getQueryParameters();
        hospital.setItems(sites.all());
        hospital.setVisible(sites.all().size() > 1);
        hospital.setValue(sites.of(asked.getSingleParameter("site")));
        order.setValue(Arrays.stream(ChildOrder.values())
                .filter(one -> asked.getSingleParameter("order")
                        .filter(one.name()::equalsIgnoreCase)
                        .isPresent())
                .findFirst()
                .orElse(ChildOrder.NAME));
        show();
        wanted.focus();
    }

    @Override
    public String getPageTitle() {
        return Texts.page("patient.children.title");
    }

    private void setUpFields() {
        wanted.setHelperText(Texts.text("patient.find.help"));
        wanted.setClearButtonVisible(true);
        wanted.setValueChangeMode(ValueChangeMode.LAZY);
        wanted.setAutocomplete(Autocomplete.OFF);
        wanted.addValueChangeListener(change -> show());
        hospital.setLabel(Texts.text("patient.hospital"));
        hospital.setItemLabelGenerator(Site::name);
        hospital.addValueChangeListener(change -> {
            if (change.isFromClient()) {
                navigate();
            }
        });
        order.setLabel(Texts.text("patient.order"));
        order.setItems(ChildOrder.values());
        order.setItemLabelGenerator(Texts::of);
        order.addValueChangeListener(change -> {
            if (change.isFromClient()) {
                navigate();
            }
        });
    }

    private void navigate() {
        var parameters = Map.of(
                "site", hospital.getValue().code(),
                "order", order.getValue().name().toLowerCase(Locale.ROOT));
        getUI().ifPresent(ui -> ui.navigate(Urls.CHILDREN, QueryParameters.simple(parameters)));
    }

    private void show() {
        var typed = wanted.getValue().strip();
        order.setEnabled(typed.isEmpty());
        if (typed.isEmpty()) {
            showAll();
        } else {
            showFound(typed);
        }
    }

    private void showAll() {
        var children = patients.list(hospital.getValue().id(), order.getValue(), 0);
        show(children, Texts.text("patient.list.empty", hospital.getValue().name()));
        offerMore(children.size());
    }

    private void showFound(String typed) {
        var children = patients.find(hospital.getValue().id(), typed, Texts.language());
        show(children, Texts.text("patient.find.nobody", hospital.getValue().name()));
        more.setVisible(false);
        said.setText(children.isEmpty() ? "" : Texts.text("patient.find.found", children.size()));
    }

    private void show(List<Child> children, String nobody) {
        shown = children.size();
        list.show(children, siteService.today(hospital.getValue().id()));
        list.setVisible(!children.isEmpty());
        empty.setText(nobody);
        empty.setVisible(children.isEmpty());
        said.setText(children.isEmpty() ? "" : Texts.text("patient.list.shown", children.size()));
    }

    private void showMore() {
        var next = patients.list(hospital.getValue().id(), order.getValue(), shown);
        shown += next.size();
        list.append(next, siteService.today(hospital.getValue().id()));
        said.setText(Texts.text("patient.list.shown", shown));
        offerMore(next.size());
    }

    private void offerMore(int lastPage) {
        more.setVisible(lastPage == PatientService.PAGE);
        if (more.isVisible()) {
            said.setText(Texts.text("patient.list.first", shown));
        }
    }
}
