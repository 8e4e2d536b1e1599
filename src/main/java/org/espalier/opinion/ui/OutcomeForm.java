package org.espalier.opinion.ui;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.HasValue;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H3;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.IntegerField;
import com.vaadin.flow.component.textfield.TextArea;
import java.util.List;
import java.util.UUID;
import java.util.stream.Stream;
import org.espalier.kit.Texts;
import org.espalier.opinion.Advice;
import org.espalier.opinion.OpinionThread;
import org.espalier.opinion.Outcome;
import org.espalier.opinion.Outcome.Horizon;
import org.espalier.opinion.ThreadId;
import org.espalier.platform.FormDraft;
import org.jspecify.annotations.Nullable;

/** Writes down what came of it, once a horizon. What is typed is kept until it is written down. */
class OutcomeForm extends Composite<Div> {

    private static final int LONGEST_MONTHS = 300;

    private final ThreadId thread;
    private final ThreadServices services;
    private final Runnable changed;
    private final FormDraft<Typed> draft;
    private final Select<Horizon> horizon;
    private final Select<Advice> done = Parts.select("opinion.outcome.done", List.of(Advice.values()));
    private final Select<Outcome.Result> result =
            Parts.select("opinion.outcome.result", List.of(Outcome.Result.values()));
    private final IntegerField months = new IntegerField(Texts.text("opinion.outcome.months"));
    private final TextArea text = Parts.area("opinion.outcome.text");
    private final UUID id = UUID.randomUUID();

    /** An outcome in the making. */
    record Typed(
            @Nullable Horizon horizon,
            @Nullable Advice done,
            Outcome.@Nullable Result result,
            @Nullable Integer months,
            String text) {}

    OutcomeForm(OpinionThread open, ThreadServices services, Runnable changed) {
        thread = open.id();
        this.services = services;
        this.changed = changed;
        draft = new FormDraft<>(services.drafts(), "opinion-outcome", thread.value(), Typed.class);
        var known = open.outcomes().stream().map(Outcome::horizon).toList();
        var unknown =
                Stream.of(Horizon.values()).filter(one -> !known.contains(one)).toList();
        horizon = Parts.select("opinion.outcome.horizon", unknown);
        horizon.setValue(unknown.getFirst());
        months.setMin(0);
        months.setMax(LONGEST_MONTHS);
        months.setErrorMessage(Texts.text("opinion.outcome.months.missing"));
        draft.typed().ifPresent(typed -> show(typed, unknown));
        Stream.<HasValue<?, ?>>of(horizon, done, result, months, text)
                .forEach(field -> field.addValueChangeListener(typed -> keep()));
        getContent().addClassName("advice-form");
        getContent()
                .add(
                        new H3(Texts.text("opinion.outcome")),
                        horizon,
                        done,
                        result,
                        months,
                        text,
                        Parts.actions(new Button(Texts.text("opinion.outcome.keep"), click -> write())));
    }

    private void show(Typed typed, List<Horizon> unknown) {
        if (typed.horizon() != null && unknown.contains(typed.horizon())) {
            horizon.setValue(typed.horizon());
        }
        if (typed.done() != null) {
            done.setValue(typed.done());
        }
        if (typed.result() != null) {
            result.setValue(typed.result());
        }
        months.setValue(typed.months());
        text.setValue(typed.text());
    }

    private void keep() {
        draft.keep(
                new Typed(horizon.getValue(), done.getValue(), result.getValue(), months.getValue(), text.getValue()));
    }

    private void write() {
        List.of(horizon, done, result).forEach(one -> one.setInvalid(one.isEmpty()));
        months.setInvalid(months.isEmpty() || months.getValue() < 0 || months.getValue() > LONGEST_MONTHS);
        if (horizon.isInvalid() || done.isInvalid() || result.isInvalid() || months.isInvalid()) {
            return;
        }
        services.closings()
                .outcome(
                        thread,
                        id,
                        new Outcome(
                                horizon.getValue(),
                                done.getValue(),
                                result.getValue(),
                                text.getValue(),
                                months.getValue()));
        draft.discard();
        changed.run();
    }
}
