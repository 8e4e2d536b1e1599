package org.espalier.kit;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.Nav;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.html.UnorderedList;
import java.util.List;

/** What screens of several places are made of: the places, sheets with a heading, and what is said between them. */
public final class PageParts {

    private PageParts() {}

    /** A place that can be gone to from here, or where one is. */
    public record Place(String url, String text, boolean here) {}

    /** The places in their order. */
    public static Nav places(String label, List<Place> places) {
        var list = new UnorderedList();
        places.forEach(place -> list.add(new ListItem(link(place))));
        var nav = new Nav(list);
        nav.addClassNames("child-pages", "no-print");
        nav.setAriaLabel(label);
        return nav;
    }

    private static Anchor link(Place place) {
        var link = new Anchor(place.url(), place.text());
        if (place.here()) {
            link.getElement().setAttribute("aria-current", "page");
        }
        return link;
    }

    public static Section part(String heading, Component... content) {
        var part = new Section(new H2(heading));
        part.add(content);
        part.addClassName("sheet");
        return part;
    }

    /** Why there is nothing, and what to do. */
    public static Div empty(String key) {
        var empty = new Div(Texts.text(key));
        empty.addClassName("empty");
        return empty;
    }

    public static Paragraph said(String text) {
        return paragraph("said", text);
    }

    public static Paragraph caution(String key) {
        return paragraph("caution", Texts.text(key));
    }

    /** A paragraph of one kind. */
    public static Paragraph paragraph(String className, String text) {
        var paragraph = new Paragraph(text);
        paragraph.addClassName(className);
        return paragraph;
    }
}
