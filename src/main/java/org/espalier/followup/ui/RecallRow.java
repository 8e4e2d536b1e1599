package org.espalier.followup.ui;

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
        var tryNow = new Button(Texts.text("followup.try." + line.proposed().name()), click -> new AttemptDialog(
                        line.proposed(),
                        line.family(),
                        line.today(),
                        new KeptFields(
                                drafts, AttemptDialog.DRAFT, line.visit().id().value()),
                        attempt -> deeds.tried().accept(line.visit(), attempt))
                .about(child.who(), line.today())
                .open());
        tryNow.setAriaLabel(Texts.text("followup.of-child", tryNow.getText(), name.getText()));
        var date = new Button(Texts.text("followup.give-date"), click -> new BookDialog(
                        line.visit(),
                        line.today(),
                        new KeptFields(
                                drafts,
                                NextVisit.DRAFT + "date",
                                line.visit().id().value()),
                        happening -> deeds.happens().apply(line.visit(), happening))
                .about(child.who(), line.today())
                .open());
        date.setAriaLabel(Texts.text("followup.of-child", date.getText(), name.getText()));
        var deedsHere = new Div(tryNow, date);
        deedsHere.addClassNames("row-deeds", "no-print");
        getContent().add(link, why(line), tried(line), new Reach(line.family()), deedsHere);
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
                            last.next().ifPresent(next -> tried.add(span("next", next(next))));
                        },
                        () -> tried.add(span("label", Texts.text("followup.nothing-tried"))));
        return tried;
    }

    private static String attempt(Attempt last) {
        return Texts.text(
                "followup.attempt.short", DateText.of(last.on()), Texts.of(last.channel()), Texts.of(last.outcome()));
    }

    private static String next(Attempt.Next next) {
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
