package org.espalier.opinion.ui;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.AnchorTarget;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.html.UnorderedList;
import java.time.LocalDate;
import java.util.List;
import org.espalier.kit.DateText;
import org.espalier.kit.Texts;
import org.espalier.kit.Urls;
import org.espalier.opinion.ThreadLine;

/** Threads, each a way to it. */
class ThreadList extends Composite<UnorderedList> {

    ThreadList(List<ThreadLine> lines, LocalDate today) {
        getContent().addClassName("threads");
        lines.forEach(line -> {
            var item = new ListItem(link(line, today));
            if (line.mine() && line.closed()) {
                var summary =
                        new Anchor("api/opinions/" + line.id().value() + "/summary", Texts.text("opinion.summary"));
                summary.setTarget(AnchorTarget.BLANK);
                summary.setRouterIgnore(true);
                item.add(summary);
            }
            getContent().add(item);
        });
    }

    private static Anchor link(ThreadLine line, LocalDate today) {
        var question = new Span(line.question());
        question.addClassName("name");
        var link = new Anchor(Urls.opinion(line.id().value()), "");
        link.add(
                question,
                new Span(Texts.text(
                        "opinion.line",
                        Parts.advice(line.wanted()),
                        line.asker(),
                        line.hospital(),
                        DateText.of(line.dueBy()),
                        line.opinions())));
        if (line.closed()) {
            link.add(mark("small", Texts.text("opinion.is-closed")));
        } else if (line.dueBy().isBefore(today) && (line.mine() || !line.answered())) {
            link.add(mark("harm", Texts.text("opinion.overdue")));
        }
        if (line.unread() > 0 && !line.closed()) {
            link.add(mark("soon", Texts.text("opinion.unread", line.unread())));
        }
        if (line.reminded() && !line.mine() && !line.closed()) {
            link.add(mark("soon", Texts.text("opinion.reminded")));
        }
        if (line.mine()) {
            line.outcomeDue()
                    .ifPresent(horizon -> link.add(mark("soon", Texts.text("opinion.outcome.due." + horizon.name()))));
        }
        if (!line.mine() && !line.closed()) {
            link.add(
                    line.answered()
                            ? mark("well", Texts.text("opinion.answered"))
                            : mark("soon", Texts.text("opinion.not-answered")));
        }
        return link;
    }

    private static Span mark(String name, String text) {
        var mark = new Span(text);
        mark.addClassName(name);
        return mark;
    }
}
