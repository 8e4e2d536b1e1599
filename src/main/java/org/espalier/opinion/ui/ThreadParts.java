package org.espalier.opinion.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Paragraph;
import java.time.ZoneId;
import java.util.stream.Collectors;
import org.espalier.access.StaffId;
import org.espalier.kit.PageParts;
import org.espalier.kit.Texts;
import org.espalier.opinion.OpinionThread;
import org.espalier.opinion.ThreadId;

/** The parts of a thread. What is typed in one of them stays while the others are read again. */
final class ThreadParts {

    private final Paragraph newer = PageParts.paragraph("notice", "");
    private final FilmsPart films;
    private final ClipsPart clips;
    private final FactsPart facts;
    private final TalkPart talk;
    private final AdvicePart advice;
    private final PeoplePart people;
    private final ClosePart close;
    private final Div right = new Div();

    ThreadParts(ThreadId thread, ThreadServices services, StaffId me, ZoneId zone, Runnable changed) {
        films = new FilmsPart(thread, services);
        clips = new ClipsPart(thread);
        facts = new FactsPart(thread, services, changed);
        talk = new TalkPart(thread, services, zone, changed, films::look);
        advice = new AdvicePart(thread, services, me, zone, changed);
        people = new PeoplePart(thread, services, me, zone, changed);
        close = new ClosePart(thread, services, zone, changed);
        newer.addClassName("soon");
        newer.getElement().setAttribute("role", "status");
    }

    Component[] parts() {
        var left = new Div(films, clips, talk);
        right.add(advice, facts, people, close);
        var both = new Div(left, right);
        both.addClassName("thread-parts");
        return new Component[] {newer, both};
    }

    void show(OpinionThread open) {
        newer.setVisible(!open.newer().isEmpty() && open.closing().isEmpty());
        newer.setText(Texts.text(
                "opinion.newer",
                open.newer().entrySet().stream()
                        .map(one -> Texts.text("opinion.newer." + one.getKey(), one.getValue()))
                        .sorted()
                        .collect(Collectors.joining(", "))));
        films.show(open);
        clips.show(open);
        facts.show(open);
        talk.show(open);
        advice.show(open);
        people.show(open);
        close.show(open);
        open.closing().ifPresent(closing -> right.addComponentAsFirst(close));
    }
}
