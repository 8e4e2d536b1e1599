package org.espalier.opinion.ui;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.HasValue;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.TextArea;
import com.vaadin.flow.component.textfield.TextField;
import com.vaadin.flow.data.value.ValueChangeMode;
import java.time.ZoneId;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;
import org.espalier.access.StaffId;
import org.espalier.kit.PageParts;
import org.espalier.kit.Texts;
import org.espalier.opinion.Advice;
import org.espalier.opinion.Opinion;
import org.espalier.opinion.OpinionData;
import org.espalier.opinion.OpinionThread;
import org.espalier.opinion.Sureness;
import org.espalier.opinion.ThreadId;
import org.espalier.platform.Draft;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.json.JsonMapper;

/** The opinions given, earlier ones of the same person beside the revised, and the reader's own in the making. */
class AdvicePart extends Composite<Section> {

    private static final String KIND = "opinion-view";
    private static final JsonMapper JSON = new JsonMapper();

    private final ThreadId thread;
    private final ThreadServices services;
    private final StaffId me;
    private final ZoneId zone;
    private final Runnable changed;
    private final Div list = new Div();
    private final Div form = new Div();
    private final Select<Advice> advice = new Select<>();
    private final TextField place = new TextField(Texts.text("opinion.where"));
    private final TextField due = new TextField(Texts.text("opinion.when"));
    private final Select<Sureness> sure = new Select<>();
    private final TextArea change = new TextArea(Texts.text("opinion.change-mind"));
    private final TextArea text = new TextArea(Texts.text("opinion.free-text"));
    private final Button revise = new Button(Texts.text("opinion.revise"), click -> revise());
    private final Button give = new Button(Texts.text("opinion.give"), click -> give());
    private UUID next = UUID.randomUUID();
    private boolean revising;

    /** An opinion in the making. */
    record Typed(
            @Nullable Advice advice,
            String place,
            String due,
            @Nullable Sureness sure,
            String change,
            String text) {}

    AdvicePart(ThreadId thread, ThreadServices services, StaffId me, ZoneId zone, Runnable changed) {
        this.thread = thread;
        this.services = services;
        this.me = me;
        this.zone = zone;
        this.changed = changed;
        advice.setLabel(Texts.text("opinion.advice"));
        advice.setItems(Advice.values());
        advice.setItemLabelGenerator(Texts::of);
        sure.setLabel(Texts.text("opinion.sure"));
        sure.setItems(Sureness.values());
        sure.setItemLabelGenerator(Texts::of);
        place.setMaxLength(400);
        due.setMaxLength(400);
        change.setMaxLength(2000);
        text.setMaxLength(4000);
        Stream.of(place, due).forEach(field -> field.setValueChangeMode(ValueChangeMode.LAZY));
        Stream.of(change, text).forEach(field -> field.setValueChangeMode(ValueChangeMode.LAZY));
        draft().ifPresent(kept -> show(JSON.readValue(kept.content(), Typed.class)));
        Stream.<HasValue<?, ?>>of(advice, place, due, sure, change, text)
                .forEach(field -> field.addValueChangeListener(typed -> keep()));
        revising = draft().isPresent();
        form.addClassName("advice-form");
        form.add(advice, place, due, sure, change, text, Parts.actions(give));
        getContent().addClassName("sheet");
        getContent().add(new H2(Texts.text("opinion.opinions")), list, revise, form);
    }

    void show(OpinionThread open) {
        list.removeAll();
        open.opinions().forEach(one -> list.add(card(one)));
        if (open.opinions().isEmpty()) {
            list.add(PageParts.paragraph("empty", Texts.text("opinion.opinions.none")));
        }
        boolean given = open.opinions().stream().anyMatch(one -> one.author().equals(me));
        give.setText(Texts.text(given ? "opinion.revise" : "opinion.give"));
        boolean mayGive = open.mayWrite() && !open.mayLead();
        form.setVisible(mayGive && (!given || revising));
        revise.setVisible(mayGive && given && !revising);
    }

    /** Begins with what was said before. */
    private void revise() {
        revising = true;
        form.setVisible(true);
        revise.setVisible(false);
        advice.focus();
    }

    private Div card(Opinion opinion) {
        var data = opinion.data();
        var card = new Div(PageParts.paragraph(
                "name", Texts.text("opinion.opinion", opinion.name(), Texts.of(data.advice()), Texts.of(data.sure()))));
        card.addClassNames("opinion", opinion.superseded() ? "earlier" : "standing");
        add(card, "opinion.where", data.place());
        add(card, "opinion.when", data.due());
        add(card, "opinion.change-mind", data.changeMind());
        if (!data.text().isEmpty()) {
            card.add(PageParts.paragraph("words", data.text()));
        }
        card.add(PageParts.paragraph(
                "small",
                Texts.text(
                        opinion.superseded() ? "opinion.given.earlier" : "opinion.given",
                        Parts.moment(opinion.at(), zone))));
        return card;
    }

    private static void add(Div card, String name, String value) {
        if (!value.isEmpty()) {
            card.add(PageParts.paragraph("line", Texts.text("opinion.paper.line", Texts.text(name), value)));
        }
    }

    private void give() {
        advice.setInvalid(advice.isEmpty());
        advice.setErrorMessage(Texts.text("opinion.advice.missing"));
        sure.setInvalid(sure.isEmpty());
        sure.setErrorMessage(Texts.text("opinion.sure.missing"));
        if (advice.isInvalid() || sure.isInvalid()) {
            return;
        }
        var data = new OpinionData(
                advice.getValue(),
                place.getValue(),
                due.getValue(),
                sure.getValue(),
                change.getValue(),
                text.getValue());
        if (services.opinions().advise(thread, next, data)) {
            next = UUID.randomUUID();
            revising = false;
            draft().ifPresent(draft -> services.drafts().discard(draft.id()));
            changed.run();
        } else {
            text.setErrorMessage(Texts.text("opinion.names-the-child"));
            text.setInvalid(true);
        }
    }

    private void show(Typed kept) {
        if (kept.advice() != null) {
            advice.setValue(kept.advice());
        }
        if (kept.sure() != null) {
            sure.setValue(kept.sure());
        }
        place.setValue(kept.place());
        due.setValue(kept.due());
        change.setValue(kept.change());
        text.setValue(kept.text());
    }

    private void keep() {
        var typed = new Typed(
                advice.getValue(),
                place.getValue(),
                due.getValue(),
                sure.getValue(),
                change.getValue(),
                text.getValue());
        var json = JSON.writeValueAsString(typed);
        var draft = draft().orElseGet(() -> services.drafts().start(KIND, thread.value(), json));
        services.drafts().save(draft.id(), draft.revision() + 1, json);
    }

    private Optional<Draft> draft() {
        return services.drafts().find(KIND, thread.value());
    }
}
