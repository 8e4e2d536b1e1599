package org.espalier.treatment.ui;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.dependency.StyleSheet;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.BeforeEnterObserver;
import com.vaadin.flow.router.HasDynamicTitle;
import com.vaadin.flow.router.NotFoundException;
import com.vaadin.flow.router.Route;
import java.util.Optional;
import org.espalier.access.SiteService;
import org.espalier.kit.Address;
import org.espalier.kit.ChildHeader;
import org.espalier.kit.Texts;
import org.espalier.kit.Urls;
import org.espalier.patient.Child;
import org.espalier.patient.ChildId;
import org.espalier.patient.PatientService;
import org.espalier.platform.Drafts;
import org.espalier.platform.Ids;
import org.espalier.stock.CatalogueService;
import org.espalier.stock.LabelService;
import org.espalier.stock.UseService;
import org.espalier.treatment.Procedure;
import org.espalier.treatment.ProcedureData;
import org.espalier.treatment.ProcedureId;
import org.espalier.treatment.RecordOutcome;
import org.espalier.treatment.ReversalService;
import org.espalier.treatment.StockRefused;
import org.espalier.treatment.Treatment;
import org.espalier.treatment.TreatmentService;

/** Records a procedure by six facts, in under a minute; or corrects one. */
@Route("child/:child/treatment/record")
@StyleSheet("themes/patient.css")
@StyleSheet("themes/treatment.css")
class RecordView extends Composite<Div> implements BeforeEnterObserver, HasDynamicTitle {

    private final TreatmentService treatments;
    private final ReversalService reversals;
    private final PatientService patients;
    private final SiteService sites;
    private final Drafts drafts;
    private final LabelService labels;
    private final UseService uses;
    private final CatalogueService catalogue;
    private final Ids ids;

    RecordView(
            TreatmentService treatments,
            ReversalService reversals,
            PatientService patients,
            SiteService sites,
            Drafts drafts,
            LabelService labels,
            UseService uses,
            CatalogueService catalogue,
            Ids ids) {
        this.treatments = treatments;
        this.reversals = reversals;
        this.patients = patients;
        this.sites = sites;
        this.drafts = drafts;
        this.labels = labels;
        this.uses = uses;
        this.catalogue = catalogue;
        this.ids = ids;
    }

    @Override
    public String getPageTitle() {
        return Texts.page("treatment.record.title");
    }

    @Override
    public void beforeEnter(BeforeEnterEvent event) {
        getContent().removeAll();
        var child = Address.id(event, "child").map(ChildId::new).flatMap(id -> patients.open(id, "treatment"));
        if (child.isEmpty()) {
            event.rerouteToError(NotFoundException.class);
            return;
        }
        var treatment = treatments.of(child.get().id());
        var corrected = Address.asked(event, "correct").flatMap(id -> treatment.standing().stream()
                .filter(one -> one.id().value().equals(id))
                .findFirst());
        show(child.get(), treatment, corrected);
    }

    private void show(Child child, Treatment treatment, Optional<Procedure> corrected) {
        var today = sites.today(child.site());
        var stops = new StopPanel(reversals, ids, child.id());
        var draft = new ProcedureDraft(
                drafts, corrected.map(one -> one.id().value()).orElse(child.id().value()));
        var source = new PieceSource(labels, uses, catalogue, child.site());
        var form = new ProcedureForm(treatment, corrected, today, ids, source, draft, stops);
        form.onSave((id, data, reason) -> {
            try {
                var outcome = keep(child.id(), corrected, id, data, reason);
                if (outcome instanceof RecordOutcome.Stopped(var why)) {
                    form.showStops(why);
                } else {
                    draft.discard();
                    getUI().ifPresent(
                                    ui -> ui.navigate(Urls.treatment(child.id().value())));
                }
            } catch (StockRefused refused) {
                form.showRefusal(refused.text());
            }
        });
        var screen = new Div(
                new H1(Texts.text(corrected.isPresent() ? "treatment.record.correct" : "treatment.record")), form);
        screen.addClassNames("screen", "narrow");
        getContent().add(new ChildHeader(child.id().value(), child.who(), today, ChildHeader.Page.TREATMENT), screen);
    }

    private RecordOutcome keep(
            ChildId child, Optional<Procedure> corrected, ProcedureId id, ProcedureData data, String reason) {
        return corrected
                .map(earlier -> treatments.correct(child, earlier.id(), id, data, reason))
                .orElseGet(() -> treatments.record(child, id, data));
    }
}
