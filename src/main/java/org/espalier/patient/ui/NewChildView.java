package org.espalier.patient.ui;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.button.ButtonVariant;
import com.vaadin.flow.component.dependency.StyleSheet;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.BeforeEnterObserver;
import com.vaadin.flow.router.HasDynamicTitle;
import com.vaadin.flow.router.QueryParameters;
import com.vaadin.flow.router.Route;
import java.util.List;
import java.util.UUID;
import org.espalier.access.Site;
import org.espalier.access.SiteId;
import org.espalier.access.SiteService;
import org.espalier.kit.Address;
import org.espalier.kit.IdentityBanner;
import org.espalier.kit.Texts;
import org.espalier.kit.Urls;
import org.espalier.patient.Child;
import org.espalier.patient.ChildData;
import org.espalier.patient.ChildId;
import org.espalier.patient.PatientService;
import org.espalier.patient.SaveOutcome;
import org.espalier.platform.Drafts;
import org.espalier.platform.FormDraft;
import org.espalier.platform.Ids;
import org.jspecify.annotations.Nullable;

/** Registers a child. The address names the child to be, so that what was typed is found again. */
@Route(Urls.NEW_CHILD)
@StyleSheet("themes/patient.css")
class NewChildView extends Composite<Div> implements BeforeEnterObserver, HasDynamicTitle {

    private static final String KIND = "child-new";

    private final PatientService patients;
    private final SiteService siteService;
    private final ClinicalSites sites;
    private final Drafts drafts;
    private final Ids ids;
    private final Select<Site> hospital = new Select<>();
    private final Div begun = new Div();
    private final Div answer = new Div();
    private final ChildForm form;
    private final Button register = new Button(Texts.text("patient.register.save"), click -> save());
    private @Nullable ChildId child;
    private @Nullable FormDraft<TypedChild> draft;

    NewChildView(PatientService patients, SiteService siteService, ClinicalSites sites, Drafts drafts, Ids ids) {
        this.patients = patients;
        this.siteService = siteService;
        this.sites = sites;
        this.drafts = drafts;
        this.ids = ids;
        form = new ChildForm(() -> siteService.today(site()));
        hospital.setLabel(Texts.text("patient.hospital"));
        hospital.setItemLabelGenerator(Site::name);
        hospital.addValueChangeListener(change -> {
            if (change.isFromClient()) {
                keep();
            }
        });
        form.addTypingListener(this::keep);
        register.addThemeVariants(ButtonVariant.PRIMARY);
        answer.getElement().setAttribute("aria-live", "polite");
        var cancel = new Button(Texts.text("patient.discard"), click -> discard());
        var actions = new Div(register, cancel);
        actions.addClassName("actions");
        getContent().addClassNames("screen", "narrow");
        getContent().add(new H1(Texts.text("patient.register")), begun, hospital, form, answer, actions);
    }

    @Override
    public void beforeEnter(BeforeEnterEvent event) {
        var id = Address.asked(event, "child");
        if (id.isEmpty()) {
            var fresh = ids.next().toString();
            event.forwardTo(Urls.NEW_CHILD, QueryParameters.of("child", fresh));
            return;
        }
        child = new ChildId(id.get());
        hospital.setItems(sites.all());
        hospital.setVisible(sites.all().size() > 1);
        hospital.setValue(sites.all().getFirst());
        var kept = new FormDraft<>(drafts, KIND, id.get(), TypedChild.class);
        draft = kept;
        kept.typed().ifPresent(this::show);
        showBegun(id.get());
        form.focus();
    }

    @Override
    public String getPageTitle() {
        return Texts.page("patient.register.title");
    }

    private SiteId site() {
        return hospital.getValue().id();
    }

    private void show(TypedChild typed) {
        sites.all().stream()
                .filter(site -> site.id().value().equals(typed.site()))
                .forEach(hospital::setValue);
        form.show(typed);
    }

    /** The children the reader began to register and did not finish. */
    private void showBegun(UUID here) {
        begun.removeAll();
        drafts.mine(KIND).stream().filter(one -> !one.subject().equals(here)).forEach(one -> {
            var typed = FormDraft.read(one, TypedChild.class);
            var name = (typed.familyName() + " " + typed.givenName()).strip();
            var link = new Anchor(
                    Urls.NEW_CHILD + "?child=" + one.subject(),
                    Texts.text("patient.register.begun", name.isEmpty() ? Texts.text("kit.not-known") : name));
            begun.add(new Paragraph(link));
        });
    }

    private void keep() {
        if (draft != null && !draft.keep(form.typed(new TypedChild(site().value(), "", "", "", null, "", 0, null)))) {
            answer.removeAll();
            answer.add(notice("patient.draft.elsewhere"));
        }
    }

    private void discard() {
        if (draft != null) {
            draft.discard();
        }
        getUI().ifPresent(ui -> ui.navigate(Urls.CHILDREN));
    }

    private void save() {
        answer.removeAll();
        form.read().ifPresent(data -> {
            var alike = patients.alike(site(), data);
            if (alike.isEmpty()) {
                save(data);
            } else {
                ask(alike, data);
            }
        });
    }

    private void ask(List<Child> alike, ChildData data) {
        var list = new ChildLinks();
        list.show(alike, siteService.today(site()));
        var another = new Button(Texts.text("patient.alike.another"), click -> save(data));
        var question = new Div(
                new H2(Texts.text("patient.alike")), new Paragraph(Texts.text("patient.alike.help")), list, another);
        question.addClassNames("notice", "soon");
        answer.removeAll();
        answer.add(question);
    }

    private void save(ChildData data) {
        if (child == null) {
            return;
        }
        answer.removeAll();
        switch (patients.register(site(), child, data)) {
            case SaveOutcome.Saved(var saved) -> finish(saved);
            case SaveOutcome.NumberTaken(var holder) ->
                form.refuseNumber(Texts.text("patient.number-taken", IdentityBanner.name(holder.who())));
            case SaveOutcome.ChangedMeanwhile(var theirs) -> finish(theirs);
        }
    }

    private void finish(Child saved) {
        if (draft != null) {
            draft.discard();
        }
        getUI().ifPresent(ui -> ui.navigate(Urls.course(saved.id().value())));
    }

    private static Paragraph notice(String text) {
        var notice = new Paragraph(Texts.text(text));
        notice.addClassNames("notice", "soon");
        return notice;
    }
}
