package org.espalier.safety.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.Nav;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.html.UnorderedList;
import org.espalier.access.CurrentStaff;
import org.espalier.access.Role;
import org.espalier.kit.Texts;
import org.espalier.kit.Urls;

/** What the screens of safety share. */
final class SafetyPage {

    private SafetyPage() {}

    /** The places of safety; who treats nobody has no broken implants to report. */
    static Component places(CurrentStaff staff, String here) {
        var list = new UnorderedList(place(Urls.SAFETY, "safety.notices", here));
        if (staff.has(Role.SURGEON) || staff.has(Role.NURSE)) {
            list.add(place(Urls.SAFETY_INCIDENTS, "safety.incidents", here));
        }
        var nav = new Nav(list);
        nav.addClassNames("child-pages", "no-print");
        nav.setAriaLabel(Texts.text("safety.menu"));
        return nav;
    }

    private static ListItem place(String url, String key, String here) {
        var link = new Anchor(url, Texts.text(key));
        if (url.equals(here)) {
            link.getElement().setAttribute("aria-current", "page");
        }
        return new ListItem(link);
    }

    static Section part(String heading, Component... content) {
        var part = new Section(new H2(heading));
        part.add(content);
        part.addClassName("sheet");
        return part;
    }

    static Paragraph caution(String key) {
        var caution = new Paragraph(Texts.text(key));
        caution.addClassName("caution");
        return caution;
    }

    static Div empty(String key) {
        var empty = new Div(Texts.text(key));
        empty.addClassName("empty");
        return empty;
    }
}
