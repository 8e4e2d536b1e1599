package org.espalier.patient.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.button.ButtonVariant;
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
import org.espalier.access.SiteService;
import org.espalier.kit.ChildHeader;
import org.espalier.kit.IdentityBanner;
import org.espalier.kit.PageParts;
import org.espalier.kit.Texts;
import org.espalier.patient.Child;
import org.espalier.patient.ChildData;
import org.espalier.patient.PatientService;
import org.espalier.patient.SaveOutcome;
import org.espalier.platform.Drafts;
import org.espalier.platform.FormDraft;

/** Changes who a child is. When somebody else was faster, theirs stands beside mine. */
@Route("child/:child/edit")
@StyleSheet("themes/patient.css")
class EditChildView extends Composite<Div> implements BeforeEnterObserver, HasDynamicTitle {

    private static final String KIND = "child-edit";

    private final PatientService patients;
    private final SiteService sites;
    private final Drafts drafts;

    EditChildView(PatientService patients, SiteService sites, Drafts drafts) {
        this.patients = patients;
        this.sites = sites;
        this.drafts = drafts;
    }

    @Override
    public void beforeEnter(BeforeEnterEvent event) {
        getContent().removeAll();
        ChildParameter.open(event, patients, "identity").ifPresent(child -> child.data()
                .ifPresentOrElse(data -> show(child, data), () -> event.rerouteToError(NotFoundException.class)));
    }

    @Override
    public String getPageTitle() {
        return Texts.page("patient.edit.title");
    }

    private void show(Child child, ChildData data) {
        getContent().removeAll();
        var today = sites.today(child.site());
        getContent()
                .add(
                        new ChildHeader(child.id().value(), child.who(), today, ChildHeader.Page.IDENTITY),
                        new Editing(child, data, today));
    }

    /** One child in the hands of one reader. */
    private final class Editing extends Composite<Div> {

        private final Child child;
        private final ChildForm form;
        private final Div answer = new Div();
        private final Div actions = new Div();
        private final FormDraft<TypedChild> draft;
        private TypedChild state;

        Editing(Child child, ChildData data, LocalDate today) {
            this.child = child;
            form = new ChildForm(() -> today);
            draft = new FormDraft<>(drafts, KIND, child.id().value(), TypedChild.class);
            state = new TypedChild(child.site().value(), "", "", "", null, "", child.version(), data);
            form.show(data);
            draft.typed().ifPresent(this::goOn);
            form.addTypingListener(this::keep);
            answer.getElement().setAttribute("aria-live", "polite");
            var save = new Button(Texts.text("kit.save"), click -> save());
            save.addThemeVariants(ButtonVariant.PRIMARY);
            actions.add(save, new Button(Texts.text("patient.discard"), click -> discard()));
            actions.addClassName("actions");
            getContent().addClassNames("screen", "narrow");
            getContent().add(new H1(Texts.text("patient.edit")), answer, form, actions);
        }

        private void goOn(TypedChild typed) {
            state = typed;
            form.show(typed);
            answer.add(notice(Texts.text("patient.draft.found"), ""));
        }

        private void keep() {
            if (!draft.keep(form.typed(state))) {
                say(notice(Texts.text("patient.draft.elsewhere"), "soon"));
            }
        }

        private void discard() {
            draft.discard();
            patients.open(child.id(), "identity")
                    .ifPresent(fresh -> fresh.data().ifPresent(data -> show(fresh, data)));
        }

        private void save() {
            answer.removeAll();
            form.read().ifPresent(data -> save(state.version(), data));
        }

        private void save(long version, ChildData data) {
            switch (patients.change(child.id(), version, data)) {
                case SaveOutcome.Saved(var saved) -> finish(saved);
                case SaveOutcome.NumberTaken(var holder) ->
                    form.refuseNumber(Texts.text("patient.number-taken", IdentityBanner.name(holder.who())));
                case SaveOutcome.ChangedMeanwhile(var theirs) ->
                    theirs.data().ifPresent(other -> compare(theirs.version(), other, data));
            }
        }

        private void compare(long version, ChildData theirs, ChildData mine) {
            var base = state.base() == null ? theirs : state.base();
            var merge = new ChildMerge(base, theirs, mine);
            if (merge.differing().isEmpty()) {
                save(version, mine);
                return;
            }
            form.setVisible(false);
            actions.setVisible(false);
            say(new TheirsBesideMine(merge, chosen -> {
                form.setVisible(true);
                actions.setVisible(true);
                form.show(chosen);
                state = new TypedChild(state.site(), "", "", "", null, "", version, theirs);
                keep();
                answer.removeAll();
                save(version, chosen);
            }));
        }

        private void finish(Child saved) {
            draft.discard();
            saved.data().ifPresent(data -> show(saved, data));
            savedNotice();
        }

        private void savedNotice() {
            var notice = notice(Texts.text("patient.saved"), "");
            notice.getElement().setAttribute("role", "status");
            EditChildView.this.getContent().addComponentAtIndex(1, notice);
        }

        private void say(Component what) {
            answer.removeAll();
            answer.add(what);
        }

        private static Paragraph notice(String text, String level) {
            var notice = PageParts.paragraph("notice", text);
            if (!level.isEmpty()) {
                notice.addClassName(level);
            }
            return notice;
        }
    }
}
