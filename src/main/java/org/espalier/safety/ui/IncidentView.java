package org.espalier.safety.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.dependency.StyleSheet;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.textfield.TextArea;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.BeforeEnterObserver;
import com.vaadin.flow.router.HasDynamicTitle;
import com.vaadin.flow.router.NotFoundException;
import com.vaadin.flow.router.Route;
import java.util.UUID;
import org.espalier.access.SiteService;
import org.espalier.kit.Address;
import org.espalier.kit.ChildHeader;
import org.espalier.kit.DateText;
import org.espalier.kit.PageParts;
import org.espalier.kit.Texts;
import org.espalier.kit.Urls;
import org.espalier.patient.Child;
import org.espalier.patient.ChildId;
import org.espalier.patient.PatientService;
import org.espalier.safety.BrokenPart;
import org.espalier.safety.DeviceIncident;
import org.espalier.safety.IncidentService;
import org.espalier.safety.Nameless;

/** What broke in this child, of which lot was it, and was it reported? */
@Route("child/:child/incidents")
@StyleSheet("themes/patient.css")
@StyleSheet("themes/stock.css")
class IncidentView extends Composite<Div> implements BeforeEnterObserver, HasDynamicTitle {

    private final IncidentService incidents;
    private final PatientService patients;
    private final SiteService sites;
    private final Div body = new Div();

    IncidentView(IncidentService incidents, PatientService patients, SiteService sites) {
        this.incidents = incidents;
        this.patients = patients;
        this.sites = sites;
        body.addClassNames("screen", "stock");
    }

    @Override
    public void beforeEnter(BeforeEnterEvent event) {
        var child = Address.id(event, "child")
                .map(ChildId::new)
                .flatMap(id -> patients.open(id, "incidents"))
                .orElseThrow(NotFoundException::new);
        getContent().removeAll();
        getContent()
                .add(
                        new ChildHeader(
                                child.id().value(), child.who(), sites.today(child.site()), ChildHeader.Page.TREATMENT),
                        body);
        refresh(child);
    }

    @Override
    public String getPageTitle() {
        return Texts.page("safety.incidents.title");
    }

    private void refresh(Child child) {
        body.removeAll();
        body.add(new H1(Texts.text("safety.incidents")));
        var parts = new Div();
        parts.addClassName("parts");
        body.add(parts);
        var open = incidents.broken(child.id()).stream()
                .filter(broken -> !broken.reported())
                .toList();
        open.forEach(broken -> parts.add(form(child, broken)));
        var reported = incidents.of(child.id());
        reported.forEach(report -> parts.add(report(child, report)));
        if (open.isEmpty() && reported.isEmpty()) {
            parts.add(PageParts.empty("safety.incidents.none"));
        }
        body.add(PageParts.caution("safety.incidents.caution"));
    }

    private Component form(Child child, BrokenPart broken) {
        var what = new TextArea(Texts.text("safety.what"));
        what.setHelperText(Texts.text("safety.what.help"));
        what.setMaxLength(1000);
        what.setWidthFull();
        var note = broken.finding().note();
        what.setValue(note == null ? "" : note);
        var report = new Button(Texts.text("safety.report"), click -> {
            boolean named = Nameless.isNamed(child.who(), what.getValue());
            what.setErrorMessage(Texts.text(named ? "safety.what.named" : "safety.what.missing"));
            what.setInvalid(named || what.getValue().strip().length() < 3);
            if (!what.isInvalid()) {
                incidents.report(child.id(), UUID.randomUUID(), broken.finding(), what.getValue());
                refresh(child);
            }
        });
        return PageParts.part(
                Texts.text(
                        "safety.broken",
                        Texts.of(broken.finding().part()),
                        DateText.of(broken.finding().on())),
                new Paragraph(Texts.text("safety.piece", broken.product(), broken.lots())),
                what,
                report);
    }

    private Component report(Child child, DeviceIncident report) {
        var zone = sites.get(child.site()).zone();
        return PageParts.part(
                Texts.text("safety.broken", Texts.of(report.part()), DateText.of(report.seenOn())),
                new Paragraph(Texts.text("safety.piece", report.product(), report.lots())),
                new Paragraph(report.what()),
                new Paragraph(Texts.text(
                        "safety.reported",
                        report.by(),
                        DateText.of(report.at().atZone(zone).toLocalDate()),
                        IncidentReportView.number(report))),
                new Anchor(Urls.incident(report.id()), Texts.text("safety.to-the-report")));
    }
}
