package org.espalier.patient.ui;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.html.UnorderedList;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.espalier.kit.DateText;
import org.espalier.kit.IdentityBanner;
import org.espalier.kit.Texts;
import org.espalier.kit.Urls;
import org.espalier.patient.Child;
import org.espalier.patient.ChildData;

/** Children as a list of ways to their courses, each told apart by the same facts as in the banner. */
final class ChildLinks extends Composite<UnorderedList> {

    ChildLinks() {
        getContent().addClassName("child-links");
    }

    void show(List<Child> children, LocalDate today) {
        getContent().removeAll();
        append(children, today);
    }

    void append(List<Child> children, LocalDate today) {
        children.forEach(child -> getContent().add(new ListItem(link(child, today))));
    }

    private static Anchor link(Child child, LocalDate today) {
        var name = new Span(IdentityBanner.name(child.who()));
        name.addClassName("name");
        var link = new Anchor(Urls.course(child.id().value()), name);
        child.data().ifPresent(data -> addFacts(link, data, today));
        return link;
    }

    private static void addFacts(Anchor link, ChildData data, LocalDate today) {
        link.add(
                fact("kit.born", DateText.born(data.birthDate(), today)),
                fact("kit.sex", Texts.of(SexChoice.of(data.sex()))),
                fact(
                        "kit.number",
                        Optional.ofNullable(data.localNumber()).orElseGet(() -> Texts.text("kit.not-known"))));
    }

    private static Span fact(String label, String value) {
        var quiet = new Span(Texts.text(label));
        quiet.addClassName("label");
        return new Span(quiet, new Span(value));
    }
}
