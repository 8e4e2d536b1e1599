package org.espalier.followup.ui;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Span;
import java.util.stream.Stream;
import org.espalier.followup.Family;
import org.espalier.followup.Phone;
import org.espalier.kit.Texts;

/**
 * How a family is reached: its telephones, the one to try first on top, or why nobody may; and what language is spoken.
 */
final class Reach extends Composite<Div> {

    Reach(Family family) {
        getContent().addClassName("reach");
        if (!family.mayBeContacted()) {
            add("harm", Texts.text("followup.do-not-contact"));
            Stream.ofNullable(family.safeguardingLead())
                    .forEach(lead -> add("label", Texts.text("followup.lead", lead)));
            return;
        }
        if (family.phones().isEmpty()) {
            add("none", Texts.text("followup.no-phone"));
        }
        family.phones().forEach(phone -> getContent().add(line(phone, family)));
        if (family.interpreter()) {
            add("label", Texts.text("followup.interpreter", Languages.name(family.language())));
        }
    }

    private static Div line(Phone phone, Family family) {
        var number = new Anchor("tel:" + phone.number().replaceAll("[^+0-9*#]", ""), phone.number());
        number.addClassName("phone");
        var line = new Div(number);
        var spoken = phone.language().equals(family.language()) ? "" : Languages.name(phone.language());
        var whose =
                Stream.of(phone.owner(), spoken).filter(text -> !text.isBlank()).toList();
        if (!whose.isEmpty()) {
            var quiet = new Span(String.join(", ", whose));
            quiet.addClassName("label");
            line.add(quiet);
        }
        return line;
    }

    private void add(String name, String text) {
        var span = new Span(text);
        span.addClassName(name);
        getContent().add(span);
    }
}
