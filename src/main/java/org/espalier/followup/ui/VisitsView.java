package org.espalier.followup.ui;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.dependency.StyleSheet;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.BeforeEnterObserver;
import com.vaadin.flow.router.HasDynamicTitle;
import com.vaadin.flow.router.Route;
import org.espalier.access.SiteService;
import org.espalier.followup.DueByService;
import org.espalier.followup.FamilyService;
import org.espalier.followup.LetterService;
import org.espalier.followup.RecallService;
import org.espalier.followup.SharedCareService;
import org.espalier.followup.TransferService;
import org.espalier.followup.VisitService;
import org.espalier.kit.ChildHeader;
import org.espalier.kit.Texts;
import org.espalier.patient.Child;
import org.espalier.patient.PatientService;
import org.espalier.platform.Drafts;

/** When must we look again at this child, and how do we reach the family? */
@Route("child/:child/visits")
@StyleSheet("themes/patient.css")
@StyleSheet("themes/followup.css")
class VisitsView extends Composite<Div> implements BeforeEnterObserver, HasDynamicTitle {

    private final PatientService patients;
    private final VisitService visits;
    private final DueByService dueBy;
    private final FamilyService families;
    private final RecallService recall;
    private final LetterService letters;
    private final TransferService transfers;
    private final SharedCareService sharedCare;
    private final SiteService sites;
    private final CareSites careSites;
    private final Drafts drafts;

    VisitsView(
            PatientService patients,
            VisitService visits,
            DueByService dueBy,
            FamilyService families,
            RecallService recall,
            LetterService letters,
            TransferService transfers,
            SharedCareService sharedCare,
            SiteService sites,
            CareSites careSites,
            Drafts drafts) {
        this.patients = patients;
        this.visits = visits;
        this.dueBy = dueBy;
        this.families = families;
        this.recall = recall;
        this.letters = letters;
        this.transfers = transfers;
        this.sharedCare = sharedCare;
        this.sites = sites;
        this.careSites = careSites;
        this.drafts = drafts;
    }

    @Override
    public void beforeEnter(BeforeEnterEvent event) {
        getContent().removeAll();
        ChildAddress.open(event, patients, "visits").ifPresent(this::show);
    }

    @Override
    public String getPageTitle() {
        return Texts.page("followup.visits.title");
    }

    private void show(Child child) {
        var today = sites.today(child.site());
        var limits = dueBy.limits(child.site());
        var history = new VisitHistory();
        var parts = new Div();
        parts.addClassName("parts");
        if (careSites.all().stream().anyMatch(site -> site.id().equals(child.site()))) {
            var attempts = new AttemptsPanel(child, recall, families, today, drafts);
            var written =
                    new LetterPanel(child, letters, families.of(child.id()).language());
            parts.add(
                    new NextVisit(child, visits, drafts, limits, today, now -> {
                        history.show(now.steps());
                        attempts.show(now.open());
                        written.show();
                    }),
                    history,
                    attempts,
                    new FamilyForm(child, families, drafts),
                    written,
                    new SharedCarePanel(child, sharedCare, sites, drafts),
                    new TransferPanel(child, transfers, sites, drafts));
        } else {
            parts.add(new NextVisit(child, visits, drafts, limits, today, now -> history.show(now.steps())), history);
        }
        var body = new Div(new H1(Texts.text("followup.visits")), parts);
        body.addClassName("screen");
        getContent().add(new ChildHeader(child.id().value(), child.who(), today, ChildHeader.Page.VISITS), body);
    }
}
