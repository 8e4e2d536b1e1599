package org.espalier.followup.ui;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.dependency.StyleSheet;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.BeforeEnterObserver;
import com.vaadin.flow.router.HasDynamicTitle;
import com.vaadin.flow.router.Menu;
import com.vaadin.flow.router.Route;
import org.espalier.access.CurrentStaff;
import org.espalier.access.Role;
import org.espalier.access.Site;
import org.espalier.followup.DueByService;
import org.espalier.followup.LetterService;
import org.espalier.kit.Texts;
import org.espalier.kit.Urls;
import org.espalier.platform.Drafts;

/** How long may we wait here? The intervals and limits each hospital signed, and what its letters say of it. */
@Route(Urls.LIMITS)
@Menu(title = "followup.menu.limits", order = 60)
@StyleSheet("themes/patient.css")
@StyleSheet("themes/followup.css")
class LimitsView extends Composite<Div> implements BeforeEnterObserver, HasDynamicTitle {

    private final DueByService dueBy;
    private final LetterService letters;
    private final CareSites sites;
    private final CurrentStaff currentStaff;
    private final transient Drafts drafts;

    LimitsView(DueByService dueBy, LetterService letters, CareSites sites, CurrentStaff currentStaff, Drafts drafts) {
        this.dueBy = dueBy;
        this.letters = letters;
        this.sites = sites;
        this.currentStaff = currentStaff;
        this.drafts = drafts;
        getContent().addClassName("screen");
    }

    @Override
    public void beforeEnter(BeforeEnterEvent event) {
        getContent().removeAll();
        var caution = new Paragraph(Texts.text("followup.limits.caution"));
        caution.addClassName("caution");
        getContent().add(new H1(Texts.text("followup.limits")), caution);
        sites.all().forEach(this::show);
    }

    @Override
    public String getPageTitle() {
        return Texts.page("followup.limits.title");
    }

    private void show(Site site) {
        boolean signs = currentStaff.has(Role.SURGEON, site.id());
        var parts = new Div(new LetterheadForm(site, letters, drafts), new LimitsForm(site, dueBy, drafts, signs));
        parts.addClassName("parts");
        getContent().add(parts);
    }
}
