package org.espalier.safety.ui;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.dependency.StyleSheet;
import com.vaadin.flow.component.html.DescriptionList;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.BeforeEnterObserver;
import com.vaadin.flow.router.HasDynamicTitle;
import com.vaadin.flow.router.NotFoundException;
import com.vaadin.flow.router.Route;
import org.espalier.access.CurrentStaff;
import org.espalier.access.SiteService;
import org.espalier.kit.Address;
import org.espalier.kit.DateText;
import org.espalier.kit.PageParts;
import org.espalier.kit.Texts;
import org.espalier.kit.Urls;
import org.espalier.safety.DeviceIncident;
import org.espalier.safety.IncidentService;

/** What do the maker and the authority get to know of what broke? On one page, for printing, and without a name. */
@Route(Urls.SAFETY_INCIDENT)
@StyleSheet("themes/patient.css")
@StyleSheet("themes/stock.css")
class IncidentReportView extends Composite<Div> implements BeforeEnterObserver, HasDynamicTitle {

    private final IncidentService incidents;
    private final SiteService sites;
    private final CurrentStaff currentStaff;

    IncidentReportView(IncidentService incidents, SiteService sites, CurrentStaff currentStaff) {
        this.incidents = incidents;
        this.sites = sites;
        this.currentStaff = currentStaff;
        getContent().addClassNames("screen", "stock");
    }

    /** The short number by which people speak of a report. */
    static String number(DeviceIncident report) {
        var text = report.id().toString();
        return text.substring(text.length() - 12);
    }

    @Override
    public void beforeEnter(BeforeEnterEvent event) {
        var asked = event.getLocation().getQueryParameters().getSingleParameter("report");
        if (asked.isEmpty()) {
            event.forwardTo(Urls.SAFETY_INCIDENTS);
            return;
        }
        var report = asked.flatMap(Address::id).flatMap(incidents::find).orElseThrow(NotFoundException::new);
        var print = new Button(Texts.text("safety.print"));
        print.addClickListener(click -> print.getElement().executeJs("window.print()"));
        var actions = new Div(print);
        actions.addClassNames("actions", "no-print");
        var sheet = new Div(facts(report));
        sheet.addClassNames("sheet", "parts");
        getContent().removeAll();
        getContent()
                .add(
                        new H1(Texts.text("safety.report-of", number(report))),
                        SafetyPage.places(currentStaff, Urls.SAFETY_INCIDENT),
                        sheet,
                        actions,
                        PageParts.caution("safety.incidents.caution"));
    }

    @Override
    public String getPageTitle() {
        return Texts.page("safety.incidents.title");
    }

    private DescriptionList facts(DeviceIncident report) {
        var site = sites.get(report.site());
        var facts = new DescriptionList();
        facts.addClassName("incident");
        fact(facts, "safety.part", Texts.of(report.part()));
        fact(facts, "safety.product", report.product());
        fact(facts, "safety.lot", report.lots());
        fact(facts, "safety.seen-on", DateText.of(report.seenOn()));
        fact(facts, "safety.what", report.what());
        fact(facts, "safety.hospital", site.name());
        fact(
                facts,
                "safety.reported-by",
                Texts.text(
                        "safety.by-on",
                        report.by(),
                        DateText.of(report.at().atZone(site.zone()).toLocalDate())));
        fact(facts, "safety.report-number", report.id().toString());
        return facts;
    }

    private static void fact(DescriptionList facts, String key, String value) {
        facts.add(new DescriptionList.Term(Texts.text(key)), new DescriptionList.Description(value));
    }
}
