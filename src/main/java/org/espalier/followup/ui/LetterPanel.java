package org.espalier.followup.ui;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.AnchorTarget;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.html.UnorderedList;
import com.vaadin.flow.component.select.Select;
import org.espalier.followup.LetterKind;
import org.espalier.followup.LetterLanguage;
import org.espalier.kit.Texts;
import org.espalier.patient.Child;

/** Letters and the calendar file for the family, in its language. */
final class LetterPanel extends Composite<Section> {

    private final Child child;
    private final UnorderedList links = new UnorderedList();

    LetterPanel(Child child, String familyLanguage) {
        this.child = child;
        var language = new Select<LetterLanguage>();
        language.setLabel(Texts.text("followup.letter.language"));
        language.setItems(LetterLanguage.values());
        language.setItemLabelGenerator(Texts::of);
        language.addValueChangeListener(change -> show(change.getValue()));
        links.addClassName("letters");
        getContent().addClassName("sheet");
        getContent()
                .add(
                        new H2(Texts.text("followup.letters")),
                        new Paragraph(Texts.text("followup.letters.help")),
                        language,
                        links);
        language.setValue(LetterLanguage.of(familyLanguage));
    }

    private void show(LetterLanguage language) {
        links.removeAll();
        for (var kind : LetterKind.values()) {
            links.add(link("letter?kind=" + kind.name() + "&language=" + language.name(), Texts.of(kind)));
        }
        links.add(link("plate-card?language=" + language.name(), Texts.text("followup.plate-card")));
        links.add(link("calendar?language=" + language.name(), Texts.text("followup.calendar")));
    }

    private ListItem link(String what, String text) {
        var link = new Anchor("api/children/" + child.id().value() + "/" + what, text);
        link.setRouterIgnore(true);
        link.setTarget(AnchorTarget.BLANK);
        return new ListItem(link);
    }
}
