package org.espalier.followup.ui;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.OrderedList;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.html.Span;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.espalier.followup.VisitStep;
import org.espalier.kit.DateText;
import org.espalier.kit.Texts;

/** What happened to the visits of a child, the last first. */
final class VisitHistory extends Composite<Section> {

    private final OrderedList list = new OrderedList();
    private final Paragraph nothing = new Paragraph(Texts.text("followup.history.empty"));

    VisitHistory() {
        list.addClassName("steps");
        nothing.addClassName("small");
        getContent().addClassName("sheet");
        getContent().add(new H2(Texts.text("followup.history")), nothing, list);
    }

    void show(List<VisitStep> steps) {
        list.removeAll();
        steps.forEach(step -> list.add(item(step)));
        list.setVisible(!steps.isEmpty());
        nothing.setVisible(steps.isEmpty());
    }

    private static ListItem item(VisitStep step) {
        var day = new Span(DateText.of(step.on()));
        day.addClassName("day");
        var what = new Span(Texts.of(step.kind()));
        what.addClassName(step.kind() == VisitStep.Kind.NOT_BROUGHT ? "soon" : "what");
        var why = Stream.of(
                        step.reason().map(Texts::of),
                        step.note(),
                        Optional.of(step.source())
                                .filter(source -> source != VisitStep.Source.HAND)
                                .map(Texts::of))
                .flatMap(Optional::stream)
                .collect(Collectors.joining(" · "));
        return new ListItem(day, what, new Span(why));
    }
}
