package org.espalier.today.ui;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.html.UnorderedList;
import java.util.List;
import org.espalier.kit.DateText;
import org.espalier.kit.IdentityBanner;
import org.espalier.kit.Texts;
import org.espalier.patient.Child;

/** One kind of what waits; it hides itself when nothing does. */
final class WaitingList extends Composite<Section> {

    private final UnorderedList list = new UnorderedList();

    WaitingList(String title) {
        getContent().addClassNames("sheet", "waiting");
        getContent().add(new H2(title), list);
    }

    /** A line about a child. */
    void add(String url, Child child, String why) {
        add(url, child, List.of(why));
    }

    /** A line about a child of which several things are to be known. */
    void add(String url, Child child, List<String> why) {
        var name = new Span(IdentityBanner.name(child.who()));
        name.addClassName("name");
        var link = new Anchor(url, name);
        child.data().ifPresent(data -> link.add(quiet(Texts.text("kit.born") + " " + DateText.of(data.birthDate()))));
        why.forEach(one -> link.add(new Span(one)));
        list.add(new ListItem(link));
    }

    /** A line about anything else. */
    void add(String url, String what) {
        list.add(new ListItem(new Anchor(url, new Span(what))));
    }

    /** How many more there are, with the way to them. */
    void further(String url, long further) {
        if (further > 0) {
            add(url, Texts.text("today.further", further));
        }
    }

    /** Says in which order the lines stand and how many more there are. */
    WaitingList closed(String order, long further) {
        setVisible(list.getComponentCount() > 0);
        if (further > 0) {
            getContent().add(new Paragraph(Texts.text("today.further", further)));
        }
        if (!order.isEmpty()) {
            var said = new Paragraph(order);
            said.addClassName("small");
            getContent().add(said);
        }
        return this;
    }

    private static Span quiet(String text) {
        var span = new Span(text);
        span.addClassName("label");
        return span;
    }
}
