package org.espalier.plan.ui;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.Nav;
import com.vaadin.flow.component.html.UnorderedList;
import java.util.Locale;
import java.util.stream.Stream;
import org.espalier.kit.Texts;
import org.espalier.kit.Urls;
import org.espalier.patient.ChildId;
import org.espalier.science.quantity.Side;

/** The way to the other limb and to the other pages of the desk. */
class DeskLinks extends Composite<Nav> {

    /** A page of the desk. */
    enum Page {
        OPTIONS,
        BOW,
        GROWTH,
        OSTEOTOMY,
        LENGTH;

        private String url(ChildId child, Side side) {
            return this == OPTIONS
                    ? Urls.plan(child.value(), Parts.word(side))
                    : Urls.planSheet(child.value(), name().toLowerCase(Locale.ROOT), Parts.word(side));
        }
    }

    DeskLinks(ChildId child, Side side, Page here) {
        var limbs = new UnorderedList();
        Stream.of(Side.RIGHT, Side.LEFT)
                .forEach(one -> limbs.add(
                        item(here.url(child, one), Texts.text("plan.other-limb", Texts.of(one)), one == side)));
        var pages = new UnorderedList();
        Stream.of(Page.values()).forEach(page -> pages.add(item(page.url(child, side), Texts.of(page), page == here)));
        getContent().addClassName("desk-links");
        getContent().setAriaLabel(Texts.text("plan.sheets"));
        getContent().add(limbs, pages);
    }

    private static ListItem item(String url, String text, boolean here) {
        var link = new Anchor(url, text);
        if (here) {
            link.getElement().setAttribute("aria-current", "page");
        }
        return new ListItem(link);
    }
}
