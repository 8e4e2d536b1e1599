package org.espalier.cost.ui;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.dependency.StyleSheet;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.BeforeEnterObserver;
import com.vaadin.flow.router.HasDynamicTitle;
import com.vaadin.flow.router.NotFoundException;
import com.vaadin.flow.router.Route;
import org.espalier.access.SiteService;
import org.espalier.cost.Account;
import org.espalier.cost.ChargeService;
import org.espalier.cost.CostReportService;
import org.espalier.kit.Address;
import org.espalier.kit.ChildHeader;
import org.espalier.kit.PageParts;
import org.espalier.kit.Texts;
import org.espalier.patient.Child;
import org.espalier.patient.ChildId;
import org.espalier.patient.PatientService;

/**
 * What did this child's care cost so far? For the surgeon who plans it, by name; the cost administrator sees a
 * pseudonym.
 */
@Route("child/:child/costs")
@StyleSheet("themes/patient.css")
@StyleSheet("themes/cost.css")
class ChildCostsView extends Composite<Div> implements BeforeEnterObserver, HasDynamicTitle {

    private final ChargeService charges;
    private final CostReportService reports;
    private final PatientService patients;
    private final SiteService sites;

    ChildCostsView(ChargeService charges, CostReportService reports, PatientService patients, SiteService sites) {
        this.charges = charges;
        this.reports = reports;
        this.patients = patients;
        this.sites = sites;
    }

    @Override
    public String getPageTitle() {
        return Texts.page("cost.child");
    }

    @Override
    public void beforeEnter(BeforeEnterEvent event) {
        getContent().removeAll();
        var child = Address.id(event, "child").map(ChildId::new).flatMap(id -> patients.open(id, "costs"));
        child.ifPresentOrElse(this::show, () -> event.rerouteToError(NotFoundException.class));
    }

    private void show(Child child) {
        var screen = new Div(new H1(Texts.text("cost.child")));
        screen.addClassNames("screen", "costs");
        charges.accountOf(child.id())
                .ifPresentOrElse(
                        account -> screen.add(sheet(account)), () -> screen.add(PageParts.empty("cost.child.none")));
        getContent()
                .add(
                        new ChildHeader(
                                child.id().value(), child.who(), sites.today(child.site()), ChildHeader.Page.TREATMENT),
                        screen);
    }

    private Div sheet(Account account) {
        return new Div(
                PageParts.said(
                        Texts.text("cost.child.known-as", account.pseudonym().text())),
                EpisodePart.of(reports.child(account)),
                PageParts.said(Texts.text("cost.episodes.what")),
                PageParts.said(Texts.text("cost.rounding")));
    }
}
