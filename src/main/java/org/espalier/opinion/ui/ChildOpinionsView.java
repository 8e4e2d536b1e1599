package org.espalier.opinion.ui;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.dependency.StyleSheet;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.BeforeEnterObserver;
import com.vaadin.flow.router.HasDynamicTitle;
import com.vaadin.flow.router.NotFoundException;
import com.vaadin.flow.router.Route;
import org.espalier.access.CurrentStaff;
import org.espalier.access.Role;
import org.espalier.access.SiteService;
import org.espalier.kit.Address;
import org.espalier.kit.ChildHeader;
import org.espalier.kit.PageParts;
import org.espalier.kit.Texts;
import org.espalier.kit.Urls;
import org.espalier.opinion.OpinionService;
import org.espalier.patient.ChildId;
import org.espalier.patient.PatientService;

/** What was asked about this child, and what came of it? */
@Route("child/:child/opinions")
@StyleSheet("themes/patient.css")
@StyleSheet("themes/opinion.css")
class ChildOpinionsView extends Composite<Div> implements BeforeEnterObserver, HasDynamicTitle {

    private final OpinionService opinions;
    private final PatientService patients;
    private final SiteService sites;
    private final CurrentStaff staff;

    ChildOpinionsView(OpinionService opinions, PatientService patients, SiteService sites, CurrentStaff staff) {
        this.opinions = opinions;
        this.patients = patients;
        this.sites = sites;
        this.staff = staff;
    }

    @Override
    public void beforeEnter(BeforeEnterEvent event) {
        var child = Address.id(event, "child")
                .flatMap(id -> patients.open(new ChildId(id), "opinions"))
                .orElseThrow(NotFoundException::new);
        var body = new Div(new H1(Texts.text("opinion.of-child")));
        body.addClassNames("screen", "opinions");
        var lines = opinions.of(child.id());
        if (lines.isEmpty()) {
            body.add(PageParts.paragraph("empty", Texts.text("opinion.of-child.none")));
        } else {
            body.add(new ThreadList(lines, sites.today(child.site())));
        }
        if (staff.has(Role.SURGEON, child.site())) {
            var ask = new Anchor(Urls.askOpinion(child.id().value()), Texts.text("opinion.ask"));
            ask.addClassName("act");
            body.add(Parts.actions(ask));
        }
        body.add(PageParts.caution("opinion.caution"));
        getContent().removeAll();
        getContent()
                .add(
                        new ChildHeader(
                                child.id().value(), child.who(), sites.today(child.site()), ChildHeader.Page.OPINIONS),
                        body);
    }

    @Override
    public String getPageTitle() {
        return Texts.page("opinion.page");
    }
}
