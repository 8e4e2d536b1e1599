package org.espalier.followup.ui;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.OrderedList;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.html.Span;
import java.time.LocalDate;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.espalier.followup.Attempt;
import org.espalier.followup.Channel;
import org.espalier.followup.FamilyService;
import org.espalier.followup.RecallService;
import org.espalier.followup.Visit;
import org.espalier.kit.DateText;
import org.espalier.kit.Texts;
import org.espalier.patient.Child;
import org.espalier.platform.Drafts;

/** What was tried to reach the family for any visit, the last first, and the next attempt to write down. */
final class AttemptsPanel extends Composite<Section> {

    private final Child child;
    private final transient RecallService recall;
    private final transient FamilyService families;
    private final transient Drafts drafts;
    private final LocalDate today;
    private final OrderedList list = new OrderedList();
    private final Paragraph nothing = new Paragraph(Texts.text("followup.attempts.empty"));
    private final Button another = new Button(Texts.text("followup.attempts.another"));
    private transient Optional<Visit> visit = Optional.empty();

    AttemptsPanel(Child child, RecallService recall, FamilyService families, LocalDate today, Drafts drafts) {
        this.child = child;
        this.recall = recall;
        this.families = families;
        this.today = today;
        this.drafts = drafts;
        list.addClassName("steps");
        nothing.addClassName("small");
        another.addClickListener(click -> visit.ifPresent(this::write));
        getContent().addClassName("sheet");
        getContent().add(new H2(Texts.text("followup.attempts")), nothing, list, another);
    }

    /** The visit that is open is the one the family is to be reached for. */
    void show(Optional<Visit> open) {
        visit = open;
        another.setVisible(open.isPresent());
        list.removeAll();
        recall.attempts(child.id()).forEach(attempt -> list.add(item(attempt)));
        list.setVisible(list.getComponentCount() > 0);
        nothing.setVisible(!list.isVisible());
    }

    private void write(Visit open) {
        var family = families.of(child.id());
        new AttemptDialog(
                        family.mayBeContacted() ? Channel.CALL : Channel.SAFEGUARDING_LEAD,
                        family,
                        today,
                        new KeptFields(drafts, AttemptDialog.DRAFT, open.id().value()),
                        attempt -> {
                            recall.tried(open, attempt);
                            show(visit);
                        })
                .open();
    }

    private static ListItem item(Attempt attempt) {
        var day = new Span(DateText.of(attempt.on()));
        day.addClassName("day");
        var what = new Span(Texts.text("followup.attempt", Texts.of(attempt.channel()), Texts.of(attempt.outcome())));
        what.addClassName("what");
        var more = Stream.of(
                        attempt.note(),
                        attempt.consentOf().map(who -> Texts.text("followup.attempt.agreed", who)),
                        attempt.next().map(RecallRow::next))
                .flatMap(Optional::stream)
                .collect(Collectors.joining(" · "));
        return new ListItem(day, what, new Span(more));
    }
}
