package org.espalier.followup.ui;

import com.vaadin.flow.component.ClickEvent;
import com.vaadin.flow.component.ComponentEventListener;
import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.Span;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.BiFunction;
import org.espalier.access.Site;
import org.espalier.followup.Attempt;
import org.espalier.followup.DueText;
import org.espalier.followup.Happening;
import org.espalier.followup.RecallLine;
import org.espalier.followup.Visit;
import org.espalier.kit.DateText;
import org.espalier.kit.IdentityBanner;
import org.espalier.kit.Texts;
import org.espalier.kit.Urls;
import org.espalier.platform.Drafts;
import org.jspecify.annotations.Nullable;

/** One child of the recall: who, why, what was tried, what is next. */
final class RecallRow extends Composite<ListItem> {
    /** What is written down from a row. */
    record Deeds(BiConsumer<Visit, Attempt> tried, BiFunction<Visit, Happening, Optional<String>> happens) {}

    private final Anchor link;

    RecallRow(RecallLine line, @Nullable Site site, Drafts drafts, Deeds deeds, Runnable onFocus) {
        var child = line.child();
        var name = new Span(IdentityBanner.name(child.who()));
        name.addClassName("name");
        link = new Anchor(Urls.visits(child.id().value()), name);
        link.addFocusListener(focus -> onFocus.run());
        child.data()
                .ifPresent(data -> link.add(
                        span("label", Texts.text("kit.born") + " " + DateText.born(data.birthDate(), line.today())),
                        span("label", number(data.localNumber()))));
        if (site != null) {
            link.add(span("label", site.name()));
        }
        var tryNow = deed("followup.try." + line.proposed().name(), name.getText(), click -> {
            onFocus.run();
            attempt(line, drafts, deeds).about(child.who(), line.today()).open();
        });
        var date = deed("followup.give-date", name.getText(), click -> {
            onFocus.run();
            date(line, drafts, deeds).about(child.who(), line.today()).open();
        });
        var deedsHere = new Div(tryNow, date);
        deedsHere.addClassNames("row-deeds", "no-print");
        getContent().add(link, why(line), tried(line), new Reach(line.family()), deedsHere);
    }

    private static Button deed(String key, String name, ComponentEventListener<ClickEvent<Button>> then) {
        var deed = new Button(Texts.text(key), then);
        deed.setAriaLabel(Texts.text("followup.of-child", deed.getText(), name));
        return deed;
    }

    private static VisitDialog attempt(RecallLine line, Drafts drafts, Deeds deeds) {
        return new AttemptDialog(
                line.proposed(),
                line.family(),
                line.today(),
                new KeptFields(drafts, AttemptDialog.DRAFT, line.visit().id().value()),
                attempt -> deeds.tried().accept(line.visit(), attempt));
    }

    private static VisitDialog date(RecallLine line, Drafts drafts, Deeds deeds) {
        return new BookDialog(
                line.visit(),
                line.today(),
                new KeptFields(
                        drafts, NextVisit.DRAFT + "date", line.visit().id().value()),
                happening -> deeds.happens().apply(line.visit(), happening));
    }

    private static String number(@Nullable String local) {
        return Texts.text("kit.number") + " " + (local == null ? Texts.text("kit.not-known") : local);
    }

    void focus() {
        link.focus();
    }

    private static Div why(RecallLine line) {
        var due = line.visit().due();
        var harm = span("harm-reason", DueText.harm(due.harm()));
        var why = new Div(
                span(line.why() == RecallLine.Why.LATE ? "harm" : "soon", Texts.of(line.why())),
                harm,
                span(
                        "label",
                        Texts.text(
                                "followup.due", DateText.of(due.lookBy()), DueText.away(due.lookBy(), line.today()))));
        if (line.notBrought() > 0) {
            why.add(span("soon", Texts.text("followup.not-brought.short", line.notBrought())));
        }
        why.addClassName("why");
        return why;
    }

    private static Div tried(RecallLine line) {
        var tried = new Div();
        tried.addClassName("tried");
        line.last()
                .ifPresentOrElse(
                        last -> {
                            tried.add(span("", attempt(last)));
                            last.note().ifPresent(note -> tried.add(span("label", note)));
                            last.next().ifPresent(next -> tried.add(span("next", next(next))));
                        },
                        () -> tried.add(span("label", Texts.text("followup.nothing-tried"))));
        if (line.tried() > 1) {
            tried.add(span("label", Texts.text("followup.tried.times", line.tried())));
        }
        return tried;
    }

    private static String attempt(Attempt last) {
        return Texts.text(
                "followup.attempt.short", DateText.of(last.on()), Texts.of(last.channel()), Texts.of(last.outcome()));
    }

    /** What is to be done next, and when. */
    static String next(Attempt.Next next) {
        return next.on()
                .map(on -> Texts.text("followup.next-step-on", next.step(), DateText.of(on)))
                .orElseGet(() -> Texts.text("followup.next-step", next.step()));
    }

    private static Span span(String name, String text) {
        var span = new Span(text);
        if (!name.isEmpty()) {
            span.addClassName(name);
        }
        return span;
    }
}
