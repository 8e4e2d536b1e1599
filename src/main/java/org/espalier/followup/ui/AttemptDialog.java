package org.espalier.followup.ui;

import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.TextField;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.espalier.followup.Attempt;
import org.espalier.followup.AttemptOutcome;
import org.espalier.followup.Channel;
import org.espalier.followup.Family;
import org.espalier.kit.DateEntryField;
import org.espalier.kit.Texts;

/** What was tried to reach the family, what came of it and what is next. */
final class AttemptDialog extends VisitDialog {

    static final String DRAFT = "attempt";

    private final transient Consumer<Attempt> record;

    private final LocalDate today;
    private final Select<Channel> channel = new Select<>();
    private final Select<AttemptOutcome> outcome = new Select<>();
    private final TextField consent;
    private final TextField note;
    private final TextField next;
    private final DateEntryField nextOn;

    AttemptDialog(Channel proposed, Family family, LocalDate today, KeptFields kept, Consumer<Attempt> record) {
        super("followup.attempt.title", "followup.attempt.save", kept);
        this.record = record;
        this.today = today;
        addComponentAsFirst(new Reach(family));
        channel.setLabel(Texts.text("followup.attempt.channel"));
        channel.setItems(family.mayBeContacted() ? List.of(Channel.values()) : List.of(Channel.SAFEGUARDING_LEAD));
        channel.setItemLabelGenerator(Texts::of);
        outcome.setLabel(Texts.text("followup.attempt.outcome"));
        outcome.setItems(AttemptOutcome.values());
        outcome.setItemLabelGenerator(Texts::of);
        outcome.setErrorMessage(Texts.text("followup.attempt.outcome.missing"));
        field(channel);
        field(outcome);
        consent = note("followup.attempt.consent");
        consent.setHelperText(Texts.text("followup.attempt.consent.help"));
        consent.setErrorMessage(Texts.text("followup.attempt.consent.missing"));
        note = note("followup.note");
        next = note("followup.attempt.next");
        nextOn = day("followup.attempt.next-on", today);
        channel.addValueChangeListener(
                change -> consent.setVisible(change.getValue().needsConsent()));
        channel.setValue(proposed);
        consent.setVisible(proposed.needsConsent());
        kept.choice("channel", channel, Channel.class)
                .choice("outcome", outcome, AttemptOutcome.class)
                .text("consent", consent)
                .text("note", note)
                .text("next", next)
                .day("nextOn", nextOn)
                .goOn();
    }

    @Override
    boolean save() {
        boolean consentMissing =
                channel.getValue().needsConsent() && consent.getValue().isBlank();
        outcome.setInvalid(outcome.isEmpty());
        consent.setInvalid(consentMissing);
        boolean dayUnread = nextOn.getValue() == null && !nextOn.typed().isBlank();
        if (outcome.isInvalid() || consentMissing || dayUnread) {
            return false;
        }
        record.accept(
                new Attempt(today, channel.getValue(), outcome.getValue(), filled(consent), filled(note), nextStep()));
        return true;
    }

    private Optional<Attempt.Next> nextStep() {
        var day = Optional.ofNullable(nextOn.getValue());
        return filled(next)
                .or(() -> day.map(on -> Texts.text("followup.attempt.again")))
                .map(step -> new Attempt.Next(step, day));
    }

    private static Optional<String> filled(TextField field) {
        return field.getValue().isBlank()
                ? Optional.empty()
                : Optional.of(field.getValue().strip());
    }
}
