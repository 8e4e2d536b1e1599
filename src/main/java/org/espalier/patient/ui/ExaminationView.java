package org.espalier.patient.ui;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.dependency.StyleSheet;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.BeforeEnterObserver;
import com.vaadin.flow.router.HasDynamicTitle;
import com.vaadin.flow.router.NotFoundException;
import com.vaadin.flow.router.Route;
import java.time.LocalDate;
import java.util.Optional;
import org.espalier.access.SiteService;
import org.espalier.kit.ChildHeader;
import org.espalier.kit.Texts;
import org.espalier.patient.BodySize;
import org.espalier.patient.BoneAge;
import org.espalier.patient.Child;
import org.espalier.patient.ChildData;
import org.espalier.patient.Diagnosis;
import org.espalier.patient.Examination;
import org.espalier.patient.ExaminationService;
import org.espalier.patient.Fact;
import org.espalier.patient.FactId;
import org.espalier.patient.Finding;
import org.espalier.patient.History;
import org.espalier.platform.Drafts;
import org.espalier.platform.Ids;
import org.espalier.science.growth.BmiReference;

/** What was measured and found on a child, and the forms to add to it. */
@Route("child/:child/examination")
@StyleSheet("themes/patient.css")
class ExaminationView extends Composite<Div> implements BeforeEnterObserver, HasDynamicTitle {

    private final ExaminationService examinations;
    private final SiteService sites;
    private final Drafts drafts;
    private final Ids ids;

    ExaminationView(ExaminationService examinations, SiteService sites, Drafts drafts, Ids ids) {
        this.examinations = examinations;
        this.sites = sites;
        this.drafts = drafts;
        this.ids = ids;
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
        return Texts.text("patient.examination.title");
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
        private final Part<Diagnosis> diagnoses;
        private final Part<BodySize> sizes;
        private final Part<BoneAge> boneAges;

        Record(Child child, ChildData data, Examination found, LocalDate today) {
            this.child = child;
            var birth = data.birthDate();
            diagnoses = new Part<>(
                    "patient.diagnoses",
                    FindingColumns.diagnosis(),
                    new DiagnosisForm(birth, today, ids, draft("diagnosis")));
            sizes = new Part<>(
                    "patient.sizes",
                    FindingColumns.size(data),
                    new BodySizeForm(birth, today, ids, draft("body-size")));
            boneAges = new Part<>(
                    "patient.bone-ages",
                    FindingColumns.boneAge(data),
                    new BoneAgeForm(birth, today, ids, draft("bone-age")));
            sizes.addNote(Texts.text("patient.bmi.source", BmiReference.SOURCE));
            var parts = new Div(diagnoses, sizes, boneAges);
            parts.addClassName("parts");
            getContent().addClassName("screen");
            getContent().add(new H1(Texts.text("patient.examination")), parts);
            show(found);
        }

        private FormDraft<TypedFinding> draft(String kind) {
            return new FormDraft<>(drafts, kind, child.id().value(), TypedFinding.class);
        }

        private void refresh() {
            show(examinations.of(child.id()));
        }

        private void show(Examination found) {
            diagnoses.show(found.diagnoses(), "patient.diagnoses.empty");
            sizes.show(found.sizes(), "patient.sizes.empty");
            boneAges.show(found.boneAges(), "patient.bone-ages.empty");
        }

        /** One kind of finding: its facts and its form. */
        private final class Part<F extends Finding> extends Composite<Section> {

            private final FactTable<F> table;
            private final FindingForm<F> form;

            Part(String title, java.util.List<FactTable.Column<F>> columns, FindingForm<F> form) {
                this.form = form;
                table = new FactTable<>(columns, form::correct, this::askToWithdraw);
                form.onSave(this::save);
                getContent().addClassName("sheet");
                getContent().add(new H2(Texts.text(title)), table, form);
            }

            void addNote(String text) {
                var note = new Paragraph(text);
                note.addClassName("small");
                getContent().add(note);
            }

            void show(History<F> history, String nothing) {
                table.show(history, Texts.text(nothing));
            }

            private void save(FindingForm.Entry<F> entry) {
                var correcting = Optional.ofNullable(entry.correcting());
                boolean kept = correcting.isEmpty() || correct(correcting.get(), entry);
                if (correcting.isEmpty()) {
                    examinations.record(child.id(), entry.id(), entry.finding());
                }
                refresh();
                if (kept) {
                    form.clear();
                    form.say(Texts.text("patient.saved"), "");
                } else {
                    form.say(Texts.text("patient.superseded-meanwhile"), "soon");
                }
            }

            private boolean correct(FactId earlier, FindingForm.Entry<F> entry) {
                return examinations.correct(child.id(), earlier, entry.id(), entry.finding(), entry.reason());
            }

            private void askToWithdraw(Fact<F> fact) {
                new WithdrawDialog(reason -> {
                            boolean kept = examinations.withdraw(child.id(), fact, new FactId(ids.next()), reason);
                            refresh();
                            form.say(
                                    Texts.text(kept ? "patient.withdrawn.done" : "patient.superseded-meanwhile"),
                                    kept ? "" : "soon");
                        })
                        .open();
            }
        }
    }
}
