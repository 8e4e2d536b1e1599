package org.espalier.plan.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.dependency.StyleSheet;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Image;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.html.UnorderedList;
import com.vaadin.flow.component.notification.Notification;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.BeforeEnterObserver;
import com.vaadin.flow.router.HasDynamicTitle;
import com.vaadin.flow.router.NotFoundException;
import com.vaadin.flow.router.Route;
import java.util.Optional;
import org.espalier.access.CurrentStaff;
import org.espalier.access.Role;
import org.espalier.access.SiteService;
import org.espalier.kit.ChildHeader;
import org.espalier.kit.DateText;
import org.espalier.kit.PageParts;
import org.espalier.kit.QuantityText;
import org.espalier.kit.Texts;
import org.espalier.kit.paper.Drawings;
import org.espalier.patient.Child;
import org.espalier.patient.PatientService;
import org.espalier.plan.ComparisonId;
import org.espalier.plan.Intent;
import org.espalier.plan.Options;
import org.espalier.plan.OptionsDrawing;
import org.espalier.plan.PlanService;
import org.espalier.plan.SheetInputs;
import org.espalier.plan.SheetKind;
import org.espalier.platform.Drafts;
import org.espalier.platform.FormDraft;
import org.espalier.platform.Ids;
import org.espalier.science.quantity.Side;

/** What could be done about this limb, and what would each take, risk, and bring by when? */
@Route("child/:child/plan")
@StyleSheet("themes/plan.css")
class PlanView extends Composite<Div> implements BeforeEnterObserver, HasDynamicTitle {

    private final PlanService plans;
    private final PatientService patients;
    private final SiteService sites;
    private final CurrentStaff staff;
    private final Ids ids;
    private final transient Drafts drafts;

    PlanView(
            PlanService plans, PatientService patients, SiteService sites, CurrentStaff staff, Ids ids, Drafts drafts) {
        this.plans = plans;
        this.patients = patients;
        this.sites = sites;
        this.staff = staff;
        this.ids = ids;
        this.drafts = drafts;
    }

    @Override
    public String getPageTitle() {
        return Texts.page("plan.title");
    }

    @Override
    public void beforeEnter(BeforeEnterEvent event) {
        var child = Parts.child(event).flatMap(id -> patients.open(id, "plan")).orElseThrow(NotFoundException::new);
        var limb = Parts.limb(event);
        show(
                child,
                limb.orElse(Side.RIGHT),
                limb.isPresent() ? plans.options(child.id(), limb.get()) : plans.options(child.id()));
    }

    private void show(Child child, Side asked, Optional<Options> options) {
        var side = options.map(Options::side).orElse(asked);
        var screen = new Div(new H1(Texts.text("plan.heading", Texts.of(side))));
        screen.addClassNames("screen", "plan");
        screen.add(new DeskLinks(child.id(), side, DeskLinks.Page.OPTIONS));
        options.ifPresentOrElse(
                found -> show(screen, child, found),
                () -> screen.add(PageParts.paragraph("empty", Texts.text("plan.none"))));
        getContent().removeAll();
        getContent()
                .add(
                        new ChildHeader(
                                child.id().value(), child.who(), sites.today(child.site()), ChildHeader.Page.PLAN),
                        screen);
    }

    private void show(Div screen, Child child, Options options) {
        screen.add(
                new Paragraph(today(options)),
                Parts.papers(child.id(), options.side(), SheetKind.OPTIONS, SheetInputs.NONE),
                chart(options),
                new OptionsTable(
                        Texts.text("plan.table"),
                        options.open().stream().map(options::inWords).toList()),
                closed(options),
                PageParts.caution("plan.caution"));
        if (staff.has(Role.SURGEON, child.site())) {
            screen.add(intent(child, options));
        }
        screen.add(new SavedList(plans.saved(child.id())));
    }

    private Component intent(Child child, Options options) {
        var draft = new FormDraft<>(
                drafts, "plan-intent-" + Parts.word(options.side()), child.id().value(), IntentForm.Typed.class);
        return new IntentForm(options, draft, intent -> keep(child, options.side(), draft, intent));
    }

    /** What was typed of an intent stays where the options alone were kept. */
    private void keep(Child child, Side side, FormDraft<IntentForm.Typed> draft, Optional<Intent> intent) {
        plans.keep(child.id(), side, new ComparisonId(ids.next()), intent.orElse(null));
        if (intent.isPresent()) {
            draft.discard();
        }
        show(child, side, plans.options(child.id(), side));
        Notification.show(Texts.text("plan.intent.kept"));
    }

    private static String today(Options options) {
        var day = DateText.of(options.ahead().today());
        return options.limb()
                .bonyHkaRead()
                .map(angle -> Texts.text("plan.today", day, QuantityText.ofDeviation(angle)))
                .orElseGet(() -> Texts.text("plan.unread", day));
    }

    private static Component chart(Options options) {
        if (!OptionsDrawing.isPossible(options.open())) {
            return PageParts.paragraph("empty", Texts.text("plan.chart.none"));
        }
        var picture = new Image(
                Drawings.address(page -> OptionsDrawing.draw(options.open(), page)), Texts.text("plan.chart.alt"));
        picture.addClassName("plan-chart");
        var scroll = new Div(picture);
        scroll.addClassName("plan-scroll");
        scroll.getElement().setAttribute("tabindex", "0");
        scroll.getElement().setAttribute("role", "group");
        scroll.getElement().setAttribute("aria-label", Texts.text("plan.chart"));
        return new Section(
                new H2(Texts.text("plan.chart")), scroll, PageParts.paragraph("note", Texts.text("plan.chart.note")));
    }

    private static Component closed(Options options) {
        var list = new UnorderedList();
        options.closed()
                .forEach(option -> list.add(new ListItem(Texts.text(
                        "plan.at",
                        Texts.of(option.option()),
                        option.notNow().map(Texts::of).orElse("")))));
        var section = new Section(new H2(Texts.text("plan.closed")), list);
        section.addClassName("plan-closed");
        return section;
    }
}
