package org.espalier.plan.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.UnorderedList;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.QueryParameters;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.espalier.kit.Address;
import org.espalier.kit.Texts;
import org.espalier.patient.ChildId;
import org.espalier.plan.SheetInputs;
import org.espalier.plan.SheetKind;
import org.espalier.science.quantity.Side;

/** What the screens of the desk share. */
final class Parts {

    private Parts() {}

    /** Several lines as a list, a single one as a paragraph. */
    static Component lines(List<String> lines) {
        if (lines.size() == 1) {
            return new Paragraph(lines.getFirst());
        }
        var list = new UnorderedList();
        lines.forEach(line -> list.add(new ListItem(line)));
        return list;
    }

    /** A sheet on either paper. */
    static Component papers(ChildId child, Side side, SheetKind kind, SheetInputs inputs) {
        var papers = new Div(paper(child, side, kind, inputs, "A4"), paper(child, side, kind, inputs, "LETTER"));
        papers.addClassName("actions");
        return papers;
    }

    private static Anchor paper(ChildId child, Side side, SheetKind kind, SheetInputs inputs, String size) {
        var asked = new LinkedHashMap<>(inputs.values());
        asked.put("limb", word(side));
        asked.put("sheet", kind.word());
        asked.put("paper", size);
        var link = new Anchor(
                "/api/children/" + child.value() + "/plan?"
                        + QueryParameters.simple(asked).getQueryString(),
                Texts.text("plan.paper." + size));
        link.getElement().setAttribute("router-ignore", true);
        return link;
    }

    static Optional<ChildId> child(BeforeEnterEvent event) {
        return Address.id(event, "child").map(ChildId::new);
    }

    /** The limb the address names. */
    static Optional<Side> limb(BeforeEnterEvent event) {
        return event.getLocation()
                .getQueryParameters()
                .getSingleParameter("limb")
                .flatMap(named -> Stream.of(Side.values())
                        .filter(side -> word(side).equals(named))
                        .findFirst());
    }

    /** The word of a side in an address. */
    static String word(Side side) {
        return side.name().toLowerCase(Locale.ROOT);
    }
}
