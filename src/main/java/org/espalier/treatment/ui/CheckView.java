package org.espalier.treatment.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.button.ButtonVariant;
import com.vaadin.flow.component.dependency.StyleSheet;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.UnorderedList;
import com.vaadin.flow.component.radiobutton.RadioButtonGroup;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.BeforeEnterObserver;
import com.vaadin.flow.router.HasDynamicTitle;
import com.vaadin.flow.router.NotFoundException;
import com.vaadin.flow.router.Route;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.Map;
import org.espalier.kit.Address;
import org.espalier.kit.ChildHeader;
import org.espalier.kit.DateText;
import org.espalier.kit.PageParts;
import org.espalier.kit.Texts;
import org.espalier.patient.Child;
import org.espalier.patient.ChildId;
import org.espalier.patient.FactId;
import org.espalier.patient.PatientService;
import org.espalier.treatment.Question;
import org.espalier.treatment.StandingPlan;
import org.espalier.treatment.TheatreCheck;
import org.espalier.treatment.TheatreFacts;
import org.espalier.treatment.TheatreService;
import org.espalier.treatment.Treatment;
import org.espalier.treatment.TreatmentText;

/** What is asked before and after an operation, below what was planned. Nothing is answered beforehand. */
@Route("child/:child/treatment/check")
@StyleSheet("themes/patient.css")
@StyleSheet("themes/treatment.css")
class CheckView extends Composite<Div> implements BeforeEnterObserver, HasDynamicTitle {

    private final Desk desk;
    private final TheatreService theatre;
    private final PatientService patients;

    CheckView(Desk desk, TheatreService theatre, PatientService patients) {
        this.desk = desk;
        this.theatre = theatre;
        this.patients = patients;
    }

    @Override
    public String getPageTitle() {
        return Texts.page("treatment.check.title");
    }

    @Override
    public void beforeEnter(BeforeEnterEvent event) {
        var child = Address.id(event, "child").map(ChildId::new).flatMap(id -> patients.open(id, "theatre"));
        if (child.isEmpty()) {
            event.rerouteToError(NotFoundException.class);
            return;
        }
        show(child.get());
    }

    private void show(Child child) {
        getContent().removeAll();
        var treatment = desk.treatments().of(child.id());
        var plans = treatment.waiting().stream().map(StandingPlan::plan).toList();
        var screen = new Div(new H1(Texts.text("treatment.check")));
        screen.addClassNames("screen", "narrow");
        screen.add(
                plans.isEmpty()
                        ? PageParts.paragraph("empty", Texts.text("treatment.check.nothing-planned"))
                        : new PlannedLarge(plans));
        screen.add(known(theatre.facts(child.id()), treatment.today()));
        screen.add(
                part(child, treatment, TheatreCheck.Phase.BEFORE, Question.Group.BEFORE),
                part(child, treatment, TheatreCheck.Phase.AFTER, Question.Group.AFTER),
                PageParts.caution("treatment.caution"));
        getContent()
                .add(
                        new ChildHeader(child.id().value(), child.who(), treatment.today(), ChildHeader.Page.TREATMENT),
                        screen);
    }

    /** What the record itself knows of the day: the film, the bone age, what stands in the way of the plan. */
    private static Component known(TheatreFacts facts, LocalDate today) {
        var list = new UnorderedList();
        list.add(item(
                facts.isFilmFresh(today),
                facts.lastFilm()
                        .map(day -> Texts.text("treatment.check.film", DateText.of(day), facts.filmMonths()))
                        .orElseGet(() -> Texts.text("treatment.check.no-film", facts.filmMonths()))));
        list.add(item(
                facts.lastBoneAge().isPresent(),
                facts.lastBoneAge()
                        .map(day -> Texts.text("treatment.check.bone-age", DateText.of(day)))
                        .orElseGet(() -> Texts.text("treatment.check.no-bone-age"))));
        list.add(item(
                facts.stops().isEmpty(),
                Texts.text(facts.stops().isEmpty() ? "treatment.check.direction" : "treatment.check.mismatch")));
        facts.stops().forEach(stop -> list.add(item(false, TreatmentText.of(stop))));
        return PageParts.part(Texts.text("treatment.check.known"), list);
    }

    private static ListItem item(boolean well, String text) {
        var item = new ListItem(text);
        item.addClassName(well ? "well" : "harm");
        return item;
    }

    private Component part(Child child, Treatment treatment, TheatreCheck.Phase phase, Question.Group group) {
        var last = treatment.checks().facts().stream()
                .filter(check -> check.phase() == phase)
                .reduce((earlier, later) -> later);
        var section = PageParts.part(Texts.of(phase));
        last.ifPresent(check ->
                section.add(PageParts.paragraph("small", Texts.text("treatment.check.last", DateText.of(check.on())))));
        Map<Question, RadioButtonGroup<Question.Answer>> answers = new EnumMap<>(Question.class);
        Question.of(group).forEach(question -> {
            var choice = new RadioButtonGroup<Question.Answer>();
            choice.setLabel(Texts.of(question));
            choice.addClassName("asked");
            choice.setItems(Arrays.asList(Question.Answer.values()));
            choice.setItemLabelGenerator(Texts::of);
            answers.put(question, choice);
            section.add(choice);
        });
        if (desk.mayWriteAt(treatment)) {
            var id = new FactId(desk.ids().next());
            var save = new Button(Texts.text("treatment.check.save", Texts.of(phase)), click -> {
                desk.facts().record(child.id(), id, new TheatreCheck(treatment.today(), phase, given(answers)));
                show(child);
            });
            save.addThemeVariants(ButtonVariant.PRIMARY);
            section.add(save);
        }
        return section;
    }

    private static Map<Question, String> given(Map<Question, RadioButtonGroup<Question.Answer>> answers) {
        var given = new EnumMap<Question, String>(Question.class);
        answers.forEach((question, choice) -> {
            if (choice.getValue() != null) {
                given.put(question, choice.getValue().name());
            }
        });
        return given;
    }
}
