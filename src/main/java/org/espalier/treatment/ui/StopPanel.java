package org.espalier.treatment.ui;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.details.Details;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H3;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.UnorderedList;
import com.vaadin.flow.component.textfield.Autocomplete;
import com.vaadin.flow.component.textfield.PasswordField;
import com.vaadin.flow.component.textfield.TextArea;
import com.vaadin.flow.component.textfield.TextField;
import java.util.List;
import java.util.UUID;
import java.util.function.Function;
import org.espalier.kit.PageParts;
import org.espalier.kit.Texts;
import org.espalier.patient.ChildId;
import org.espalier.platform.Ids;
import org.espalier.treatment.PhysisKey;
import org.espalier.treatment.PlateSide;
import org.espalier.treatment.ReversalService;
import org.espalier.treatment.Stop;
import org.espalier.treatment.TreatmentFact;
import org.espalier.treatment.TreatmentText;

/** Says why something was stopped; where a deliberate reversal lets it pass, takes its reason and the second person. */
final class StopPanel extends Composite<Div> {

    /** Where the stopped tether lies. */
    record Place(PhysisKey physis, PlateSide side) {}

    private final ReversalService reversals;
    private final Ids ids;
    private final ChildId child;

    StopPanel(ReversalService reversals, Ids ids, ChildId child) {
        this.reversals = reversals;
        this.ids = ids;
        this.child = child;
        getContent().setVisible(false);
    }

    void clear() {
        getContent().removeAll();
        getContent().setVisible(false);
    }

    void show(List<Stop> stops, Function<Stop, Place> place, Runnable again) {
        clear();
        getContent().setVisible(true);
        var list = new UnorderedList();
        stops.forEach(stop -> list.add(new ListItem(TreatmentText.of(stop))));
        var notice = new Div(new H3(Texts.text("treatment.stopped")), list);
        notice.addClassNames("notice", "harm", "stopped");
        notice.getElement().setAttribute("role", "alert");
        getContent().add(notice);
        stops.stream().filter(stop -> stop.reason().isReversible()).findFirst().ifPresent(stop -> getContent()
                .add(reversal(place.apply(stop), again)));
        getContent().getElement().callJsFunction("scrollIntoView");
    }

    private Details reversal(Place place, Runnable again) {
        var details = new Details(Texts.text("treatment.reversal"), new ReversalForm(place, again));
        details.addClassName("reversal");
        return details;
    }

    /** The reason, and the second person's own name and password, or a wait for their own sign-in. */
    private final class ReversalForm extends Composite<Div> {

        private final Place place;
        private final Runnable again;
        private final UUID id = ids.next();
        private final TextArea because = Choices.area("treatment.reversal.because", TreatmentFact.REMARK_LENGTH);
        private final TextField login = Choices.text("treatment.reversal.login", 120);
        private final PasswordField password = new PasswordField(Texts.text("treatment.reversal.password"));
        private final Div answer = new Div();

        ReversalForm(Place place, Runnable again) {
            this.place = place;
            this.again = again;
            login.setAutocomplete(Autocomplete.OFF);
            password.setAutocomplete(Autocomplete.OFF);
            password.setWidthFull();
            answer.getElement().setAttribute("role", "status");
            var beside = new Button(Texts.text("treatment.reversal.beside"), click -> beside());
            var later = new Button(Texts.text("treatment.reversal.later"), click -> later());
            var actions = new Div(beside, later);
            actions.addClassName("actions");
            getContent()
                    .add(
                            PageParts.paragraph(
                                    "small",
                                    Texts.text(
                                            "treatment.reversal.help",
                                            TreatmentText.of(place.physis()),
                                            Texts.of(place.side()))),
                            because,
                            login,
                            password,
                            answer,
                            actions);
        }

        private boolean asked() {
            because.setInvalid(because.getValue().isBlank());
            because.setErrorMessage(Texts.text("treatment.reason.missing"));
            if (!because.isInvalid()) {
                reversals.ask(child, id, place.physis(), place.side(), because.getValue());
            }
            return !because.isInvalid();
        }

        private void beside() {
            if (!asked()) {
                return;
            }
            var consent = reversals.consentBeside(child, id, login.getValue(), password.getValue());
            password.clear();
            say(Texts.of(consent));
            if (consent == ReversalService.Consent.GIVEN) {
                again.run();
            }
        }

        private void later() {
            if (asked()) {
                say(Texts.text("treatment.reversal.asked"));
            }
        }

        private void say(String text) {
            answer.removeAll();
            answer.add(PageParts.paragraph("notice", text));
        }
    }
}
