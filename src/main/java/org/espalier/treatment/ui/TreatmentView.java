package org.espalier.treatment.ui;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.dependency.StyleSheet;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.BeforeEnterObserver;
import com.vaadin.flow.router.HasDynamicTitle;
import com.vaadin.flow.router.NotFoundException;
import com.vaadin.flow.router.Route;
import java.time.LocalDate;
import java.util.Optional;
import org.espalier.access.Role;
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
import org.espalier.treatment.Reversal;
import org.espalier.treatment.Treatment;
import org.espalier.treatment.TreatmentText;

/** Where does each physis stand and why, what is in place, what was done, and what is meant to be done? */
@Route("child/:child/treatment")
@StyleSheet("themes/patient.css")
@StyleSheet("themes/treatment.css")
class TreatmentView extends Composite<Div> implements BeforeEnterObserver, HasDynamicTitle {

    private final Desk desk;
    private final PatientService patients;
    private final SiteService sites;

    TreatmentView(Desk desk, PatientService patients, SiteService sites) {
        this.desk = desk;
        this.patients = patients;
        this.sites = sites;
    }

    @Override
    public String getPageTitle() {
        return Texts.page("treatment.title");
    }

    @Override
    public void beforeEnter(BeforeEnterEvent event) {
        getContent().removeAll();
        var child = Address.id(event, "child").map(ChildId::new).flatMap(id -> patients.open(id, "treatment"));
        if (child.isEmpty()) {
            event.rerouteToError(NotFoundException.class);
            return;
        }
        show(child.get());
    }

    private void show(Child child) {
        getContent().removeAll();
        var treatment = desk.treatments().of(child.id());
        Runnable again = () -> show(child);
        boolean writes = desk.mayWriteAt(treatment);
        var head = new Div(new H1(Texts.text("treatment.heading")));
        head.addClassName("screen-head");
        if (writes) {
            head.add(actions(child, desk.staff().has(Role.SURGEON, treatment.site())));
        }
        var screen = new Div(head);
        screen.addClassName("screen");
        treatment.reversals().stream()
                .filter(reversal -> reversal.consent().isEmpty())
                .forEach(reversal -> screen.add(waiting(treatment, reversal, again)));
        var limbs = new Div();
        limbs.addClassName("limbs");
        treatment.limbs().forEach(limb -> limbs.add(new LimbPanel(limb, treatment, desk, again)));
        screen.add(
                limbs,
                new ImplantsPanel(treatment, desk, again),
                new ProcedureList(treatment, desk, again),
                new FactLists(treatment, desk, again),
                PageParts.caution("treatment.caution"));
        getContent()
                .add(
                        new ChildHeader(
                                child.id().value(), child.who(), sites.today(child.site()), ChildHeader.Page.TREATMENT),
                        screen);
    }

    private static Div actions(Child child, boolean surgeon) {
        var record = new Anchor(Urls.recordProcedure(child.id().value()), Texts.text("treatment.record"));
        record.addClassName("act-link");
        var check = new Anchor(Urls.theatreCheck(child.id().value()), Texts.text("treatment.check"));
        var actions = new Div(record, check);
        if (surgeon) {
            actions.add(new Anchor(Urls.costs(child.id().value()), Texts.text("treatment.costs")));
        }
        actions.addClassName("actions");
        return actions;
    }

    private Section waiting(Treatment treatment, Reversal reversal, Runnable again) {
        var section = new Section(
                new H2(Texts.text("treatment.reversal.waiting")),
                PageParts.paragraph(
                        "asked",
                        Texts.text(
                                "treatment.reversal.of",
                                TreatmentText.place(
                                        reversal.physis().side(), Optional.of(reversal.physis()), reversal.plateSide()),
                                reversal.because(),
                                reversal.askedByName(),
                                DateText.of(LocalDate.ofInstant(
                                        reversal.askedAt(),
                                        sites.get(treatment.site()).zone())))));
        section.addClassNames("notice", "soon");
        boolean another = desk.staff().find().filter(reversal.askedBy()::equals).isEmpty();
        if (another && desk.mayWriteAt(treatment)) {
            section.add(new Button(Texts.text("treatment.reversal.consent"), click -> {
                desk.reversals().consent(treatment.child(), reversal.id());
                again.run();
            }));
        }
        return section;
    }
}
