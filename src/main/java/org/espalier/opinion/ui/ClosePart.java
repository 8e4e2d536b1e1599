package org.espalier.opinion.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.AnchorTarget;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.IntegerField;
import com.vaadin.flow.component.textfield.TextArea;
import com.vaadin.flow.component.textfield.TextField;
import java.time.ZoneId;
import java.util.List;
import java.util.UUID;
import org.espalier.kit.Texts;
import org.espalier.opinion.Advice;
import org.espalier.opinion.Closing;
import org.espalier.opinion.OpinionThread;
import org.espalier.opinion.Outcome;
import org.espalier.opinion.ThreadId;

/** What was decided and by whom; later what came of it, beside what was advised. */
class ClosePart extends Composite<Section> {

    private final ThreadId thread;
    private final ThreadServices services;
    private final ZoneId zone;
    private final Runnable changed;
    private final Div told = new Div();
    private final Div form = new Div();

    ClosePart(ThreadId thread, ThreadServices services, ZoneId zone, Runnable changed) {
        this.thread = thread;
        this.services = services;
        this.zone = zone;
        this.changed = changed;
        getContent().addClassName("sheet");
        getContent().add(new H2(Texts.text("opinion.decision")), told, form);
    }

    void show(OpinionThread open) {
        told.removeAll();
        open.closing().ifPresent(closing -> tell(open, closing));
        boolean leads = open.mayLead();
        getContent().setVisible(leads || open.closing().isPresent());
        if (leads && open.closing().isEmpty() && form.getComponentCount() == 0) {
            form.add(closing());
        } else if (open.closing().isPresent()) {
            form.removeAll();
            if (leads && open.outcomes().size() < Outcome.Horizon.values().length) {
                form.add(outcome(open));
            }
        }
    }

    private void tell(OpinionThread open, Closing closing) {
        told.add(
                Parts.text("name", Texts.of(closing.decided())),
                Parts.text("words", closing.text()),
                Parts.text(
                        "small", Texts.text("opinion.decided-by", closing.decidedBy(), Parts.day(closing.at(), zone))));
        if (open.child().isPresent()) {
            var summary = new Anchor("api/opinions/" + thread.value() + "/summary", Texts.text("opinion.summary"));
            summary.setTarget(AnchorTarget.BLANK);
            summary.setRouterIgnore(true);
            told.add(summary);
        }
        open.outcomes()
                .forEach(one -> told.add(Parts.text(
                        "words",
                        Texts.text(
                                "opinion.outcome.line",
                                Texts.of(one.horizon()),
                                Texts.of(one.done()),
                                Texts.of(one.result()),
                                one.months(),
                                one.text()))));
    }

    private Component closing() {
        Select<Advice> decided = select("opinion.decided", List.of(Advice.values()));
        var what = area("opinion.decided.text");
        var by = new TextField(Texts.text("opinion.decided.by"));
        by.setMaxLength(200);
        by.setErrorMessage(Texts.text("opinion.decided.by.missing"));
        var close = new Button(Texts.text("opinion.close"), click -> {
            decided.setInvalid(decided.isEmpty());
            what.setInvalid(what.getValue().strip().length() < 3);
            by.setInvalid(by.getValue().strip().length() < 2);
            if (!decided.isInvalid() && !what.isInvalid() && !by.isInvalid()) {
                services.closings().close(thread, decided.getValue(), what.getValue(), by.getValue());
                changed.run();
            }
        });
        return new Div(decided, what, by, Parts.text("small", Texts.text("opinion.close.help")), Parts.actions(close));
    }

    private Component outcome(OpinionThread open) {
        var known = open.outcomes().stream().map(Outcome::horizon).toList();
        Select<Outcome.Horizon> horizon = select(
                "opinion.outcome.horizon",
                List.of(Outcome.Horizon.values()).stream()
                        .filter(one -> !known.contains(one))
                        .toList());
        Select<Advice> done = select("opinion.outcome.done", List.of(Advice.values()));
        Select<Outcome.Result> result = select("opinion.outcome.result", List.of(Outcome.Result.values()));
        var months = new IntegerField(Texts.text("opinion.outcome.months"));
        months.setMin(0);
        months.setMax(300);
        months.setErrorMessage(Texts.text("opinion.outcome.months.missing"));
        var text = area("opinion.outcome.text");
        var keep = new Button(Texts.text("opinion.outcome.keep"), click -> {
            List.of(horizon, done, result).forEach(one -> one.setInvalid(one.isEmpty()));
            months.setInvalid(months.isEmpty() || months.getValue() < 0 || months.getValue() > 300);
            if (!horizon.isInvalid() && !done.isInvalid() && !result.isInvalid() && !months.isInvalid()) {
                services.closings()
                        .outcome(
                                thread,
                                UUID.randomUUID(),
                                new Outcome(
                                        horizon.getValue(),
                                        done.getValue(),
                                        result.getValue(),
                                        text.getValue(),
                                        months.getValue()));
                changed.run();
            }
        });
        return new Div(horizon, done, result, months, text, Parts.actions(keep));
    }

    private static <T extends Enum<T>> Select<T> select(String key, List<T> items) {
        var select = new Select<T>();
        select.setLabel(Texts.text(key));
        select.setItems(items);
        select.setItemLabelGenerator(Texts::of);
        select.setErrorMessage(Texts.text("opinion.choose"));
        return select;
    }

    private static TextArea area(String key) {
        var area = new TextArea(Texts.text(key));
        area.setMaxLength(4000);
        area.setErrorMessage(Texts.text("opinion.say-it"));
        return area;
    }
}
