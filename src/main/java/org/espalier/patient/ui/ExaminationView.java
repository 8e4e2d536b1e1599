package org.espalier.patient.ui;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.dependency.StyleSheet;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.BeforeEnterObserver;
import com.vaadin.flow.router.HasDynamicTitle;
import com.vaadin.flow.router.NotFoundException;
import com.vaadin.flow.router.Route;
import java.time.LocalDate;
import java.util.List;
import org.espalier.access.SiteService;
import org.espalier.kit.ChildHeader;
import org.espalier.kit.ExaminationPart;
import org.espalier.kit.Texts;
import org.espalier.patient.BodySize;
import org.espalier.patient.BoneAge;
import org.espalier.patient.BoneDisease;
import org.espalier.patient.Child;
import org.espalier.patient.ChildData;
import org.espalier.patient.ClinicalExamination;
import org.espalier.patient.Diagnosis;
import org.espalier.patient.Examination;
import org.espalier.patient.ExaminationService;
import org.espalier.patient.Finding;
import org.espalier.patient.ImagingReport;
import org.espalier.patient.LabResult;
import org.espalier.patient.TibiaVaraStage;
import org.espalier.platform.Drafts;
import org.espalier.platform.FormDraft;
import org.espalier.platform.Ids;
import org.espalier.science.growth.BmiReference;
import org.springframework.beans.factory.ObjectProvider;

/** What was measured and found on a child, and the forms to add to it. */
@Route("child/:child/examination")
@StyleSheet("themes/patient.css")
class ExaminationView extends Composite<Div> implements BeforeEnterObserver, HasDynamicTitle {

    private final ExaminationService examinations;
    private final SiteService sites;
    private final Drafts drafts;
    private final Ids ids;
    private final ObjectProvider<ExaminationPart> others;

    ExaminationView(
            ExaminationService examinations,
            SiteService sites,
            Drafts drafts,
            Ids ids,
            ObjectProvider<ExaminationPart> others) {
        this.examinations = examinations;
        this.sites = sites;
        this.drafts = drafts;
        this.ids = ids;
        this.others = others;
    }

    @Override
    public void beforeEnter(BeforeEnterEvent event) {
        getContent().removeAll();
        var found = ChildParameter.id(event).map(examinations::of);
        var child = found.flatMap(Examination::child);
        var data = child.flatMap(Child::data);
        if (data.isEmpty()) {
            event.rerouteToError(NotFoundException.class);
            return;
        }
        show(child.get(), data.get(), found.get());
    }

    @Override
    public String getPageTitle() {
        return Texts.page("patient.examination.title");
    }

    private void show(Child child, ChildData data, Examination found) {
        var today = sites.today(child.site());
        getContent()
                .add(
                        new ChildHeader(child.id().value(), child.who(), today, ChildHeader.Page.EXAMINATION),
                        new Record(child, data, found, today));
    }

    /** One child's record on the screen. */
    private final class Record extends Composite<Div> {

        private final Child child;
        private final LocalDate birth;
        private final LocalDate today;
        private final Div need = new Div();
        private final VisitForm visitForm;
        private final FindingPart<ClinicalExamination> visits;
        private final FindingPart<BodySize> sizes;
        private final FindingPart<BoneAge> boneAges;
        private final FindingPart<Diagnosis> diagnoses;
        private final FindingPart<TibiaVaraStage> stages;
        private final FindingPart<LabResult> labs;
        private final FindingPart<BoneDisease> boneDisease;
        private final FindingPart<ImagingReport> imaging;

        Record(Child child, ChildData data, Examination found, LocalDate today) {
            this.child = child;
            this.today = today;
            birth = data.birthDate();
            visitForm = new VisitForm(data, today, ids, draft("visit"));
            visits = part("patient.visits.", WorkUpColumns.visit(), visitForm);
            sizes = part("patient.sizes.", FindingColumns.size(data), form(BodySizeForm::new, "body-size"));
            boneAges = part("patient.bone-ages.", FindingColumns.boneAge(data), form(BoneAgeForm::new, "bone-age"));
            diagnoses = part("patient.diagnoses.", FindingColumns.diagnosis(), form(DiagnosisForm::new, "diagnosis"));
            stages = part("patient.stages.", WorkUpColumns.stage(), form(StageForm::new, "stage"));
            labs = part("patient.labs.", WorkUpColumns.lab(), form(LabResultForm::new, "lab"));
            boneDisease = part(
                    "patient.bone-disease.", WorkUpColumns.boneDisease(), form(BoneDiseaseForm::new, "bone-disease"));
            imaging = part("patient.imaging.", WorkUpColumns.imaging(), form(ImagingForm::new, "imaging"));
            sizes.addNote(Texts.text("patient.bmi.source", BmiReference.SOURCE));
            labs.addNote(Texts.text("patient.labs.note"));
            stages.addNote(Texts.text("patient.stages.note"));
            need.getElement().setAttribute("aria-live", "polite");
            var parts = new Div(visits);
            others.orderedStream()
                    .forEach(other -> parts.add(other.of(child.id().value(), child.who(), today)));
            parts.add(sizes, boneAges, diagnoses, stages, labs, boneDisease, imaging);
            parts.addClassName("parts");
            getContent().addClassName("screen");
            getContent().add(new H1(Texts.text("patient.examination")), need, parts);
            show(found);
        }

        private <F extends Finding> FindingForm<F> form(FormMaker<F> maker, String kind) {
            return maker.make(birth, today, ids, draft(kind));
        }

        private <F extends Finding> FindingPart<F> part(
                String title, List<FactTable.Column<F>> columns, FindingForm<F> form) {
            return new FindingPart<>(examinations, child.id(), title, columns, form, this::refresh);
        }

        private FormDraft<TypedFinding> draft(String kind) {
            return new FormDraft<>(drafts, kind, child.id().value(), TypedFinding.class);
        }

        private void refresh() {
            show(examinations.of(child.id()));
        }

        private void show(Examination found) {
            need.removeAll();
            found.boneAgeNeed(today).ifPresent(why -> need.add(notice(Texts.of(why))));
            visitForm.setLastSize(found.sizes().latest());
            visits.show(found.visits());
            sizes.show(found.sizes());
            boneAges.show(found.boneAges());
            diagnoses.show(found.diagnoses());
            stages.setVisible(found.hasStages() || !found.stages().facts().isEmpty());
            stages.show(found.stages());
            labs.show(found.labs());
            boneDisease.show(found.boneDisease());
            imaging.show(found.imaging());
        }

        private static Paragraph notice(String text) {
            var notice = new Paragraph(text);
            notice.addClassNames("notice", "soon");
            return notice;
        }
    }

    /** Makes the form of a kind of finding. */
    private interface FormMaker<F extends Finding> {
        FindingForm<F> make(LocalDate birth, LocalDate today, Ids ids, FormDraft<TypedFinding> draft);
    }
}
