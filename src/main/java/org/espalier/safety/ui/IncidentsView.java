package org.espalier.safety.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.dependency.StyleSheet;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.BeforeEnterObserver;
import com.vaadin.flow.router.HasDynamicTitle;
import com.vaadin.flow.router.Route;
import org.espalier.access.CurrentStaff;
import org.espalier.access.SiteService;
import org.espalier.kit.DateText;
import org.espalier.kit.IdentityBanner;
import org.espalier.kit.PageParts;
import org.espalier.kit.Texts;
import org.espalier.kit.Urls;
import org.espalier.patient.PatientService;
import org.espalier.safety.DeviceIncident;
import org.espalier.safety.IncidentService;
import org.espalier.safety.UnreportedBreak;

/** What broke in children in my care, and of what is there no report yet? */
@Route(Urls.SAFETY_INCIDENTS)
@StyleSheet("themes/patient.css")
@StyleSheet("themes/stock.css")
class IncidentsView extends Composite<Div> implements BeforeEnterObserver, HasDynamicTitle {

    private final IncidentService incidents;
    private final PatientService patients;
    private final SiteService sites;
    private final CurrentStaff currentStaff;

    IncidentsView(IncidentService incidents, PatientService patients, SiteService sites, CurrentStaff currentStaff) {
        this.incidents = incidents;
        this.patients = patients;
        this.sites = sites;
        this.currentStaff = currentStaff;
        getContent().addClassNames("screen", "stock");
    }

    @Override
    public void beforeEnter(BeforeEnterEvent event) {
        var parts = new Div(
                PageParts.part(Texts.text("safety.unreported"), unreported()),
                PageParts.part(Texts.text("safety.reports"), reports()));
        parts.addClassName("parts");
        getContent().removeAll();
        getContent()
                .add(
                        new H1(Texts.text("safety.incidents")),
                        SafetyPage.places(currentStaff, Urls.SAFETY_INCIDENTS),
                        parts,
                        PageParts.caution("safety.incidents.caution"));
    }

    @Override
    public String getPageTitle() {
        return Texts.page("safety.incidents.title");
    }

    private Component unreported() {
        return new NoticeTables.Lines<UnreportedBreak>("safety.unreported.none", "safety.ordered.seen")
                .show("safety.child", this::child)
                .text("safety.part", one -> Texts.of(one.part()))
                .text("safety.seen-on", one -> DateText.of(one.seenOn()))
                .text("safety.hospital", one -> sites.get(one.site()).name())
                .with(incidents.unreported());
    }

    private Component child(UnreportedBreak one) {
        var name = patients.open(one.child(), "broken implants")
                .map(child -> IdentityBanner.name(child.who()))
                .orElseGet(() -> Texts.text("kit.not-known"));
        return new Anchor(Urls.incidents(one.child().value()), name);
    }

    private Component reports() {
        return new NoticeTables.Lines<DeviceIncident>("safety.reports.none", "safety.ordered.reported")
                .show(
                        "safety.report-number",
                        one -> new Anchor(Urls.incident(one.id()), IncidentReportView.number(one)))
                .text("safety.part", one -> Texts.of(one.part()))
                .text("safety.product", DeviceIncident::product)
                .text("safety.lot", DeviceIncident::lots)
                .text("safety.seen-on", one -> DateText.of(one.seenOn()))
                .text(
                        "safety.reported-on",
                        one -> DateText.of(
                                one.at().atZone(sites.get(one.site()).zone()).toLocalDate()))
                .with(incidents.all());
    }
}
