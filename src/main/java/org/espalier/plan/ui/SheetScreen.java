package org.espalier.plan.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.BeforeEnterObserver;
import com.vaadin.flow.router.HasDynamicTitle;
import com.vaadin.flow.router.Location;
import com.vaadin.flow.router.NotFoundException;
import com.vaadin.flow.router.QueryParameters;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.espalier.access.SiteService;
import org.espalier.kit.ChildHeader;
import org.espalier.kit.Texts;
import org.espalier.kit.Urls;
import org.espalier.patient.Child;
import org.espalier.patient.ChildId;
import org.espalier.patient.PatientService;
import org.espalier.plan.Sheet;
import org.espalier.plan.SheetInputs;
import org.espalier.plan.SheetKind;
import org.espalier.plan.SheetService;
import org.espalier.science.quantity.Side;

/** A sheet of the desk: what is asked for above, what follows below, and the same on paper. */
abstract class SheetScreen extends Composite<Div> implements BeforeEnterObserver, HasDynamicTitle {

    private final SheetKind kind;
    private final transient SheetService sheets;
    private final transient PatientService patients;
    private final transient SiteService sites;
    private final Div body = new Div();
    private final Div papers = new Div();

    SheetScreen(SheetKind kind, SheetService sheets, PatientService patients, SiteService sites) {
        this.kind = kind;
        this.sheets = sheets;
        this.patients = patients;
        this.sites = sites;
    }

    /** What is asked for; empty where the facts on record are enough. */
    Optional<Component> form(ChildId child, Side side, SheetInputs inputs) {
        return Optional.empty();
    }

    /** Takes a number on record over into what is typed; only sheets that offer some do. */
    void take(ChildId child, Side side, Sheet.Offered number) {
        throw new IllegalStateException("The sheet " + kind + " offers no " + number.input());
    }

    @Override
    public String getPageTitle() {
        return Texts.page("plan.Page." + kind.name());
    }

    @Override
    public void beforeEnter(BeforeEnterEvent event) {
        var child = Parts.child(event).flatMap(id -> patients.open(id, "plan")).orElseThrow(NotFoundException::new);
        var inputs = new SheetInputs(event.getLocation().getQueryParameters().getParameters().entrySet().stream()
                .filter(entry -> !entry.getValue().isEmpty())
                .collect(Collectors.toMap(
                        Map.Entry::getKey, entry -> entry.getValue().getFirst())));
        show(child, Parts.limb(event).orElse(Side.RIGHT), inputs);
    }

    private void show(Child child, Side side, SheetInputs inputs) {
        var screen = new Div();
        screen.addClassNames("screen", "plan");
        screen.add(new H1(Texts.text("plan." + kind.word() + ".title", Texts.of(side))));
        screen.add(new DeskLinks(child.id(), side, DeskLinks.Page.valueOf(kind.name())));
        form(child.id(), side, inputs).ifPresent(screen::add);
        screen.add(papers, body);
        reckon(child.id(), side, inputs);
        getContent().removeAll();
        getContent()
                .add(
                        new ChildHeader(
                                child.id().value(), child.who(), sites.today(child.site()), ChildHeader.Page.PLAN),
                        screen);
    }

    /** Shows the sheet by what was typed, and writes it into the address. */
    final void reckonAnew(ChildId child, Side side, Map<String, String> typed) {
        var values = new LinkedHashMap<>(typed);
        values.put("limb", Parts.word(side));
        var place = Urls.planPage(child.value(), kind.word());
        UI.getCurrent().getPage().getHistory().replaceState(null, new Location(place, QueryParameters.simple(values)));
        reckon(child, side, new SheetInputs(values));
    }

    private void reckon(ChildId child, Side side, SheetInputs inputs) {
        var sheet = sheets.sheet(child, side, kind, inputs).orElseThrow(NotFoundException::new);
        body.removeAll();
        body.add(new SheetBody(sheet, number -> take(child, side, number)));
        papers.removeAll();
        papers.add(Parts.papers(child, side, kind, inputs));
    }
}
