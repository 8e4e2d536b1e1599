package org.espalier.followup.ui;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.AnchorTarget;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.html.UnorderedList;
import com.vaadin.flow.component.select.Select;
import org.espalier.followup.LetterKind;
import org.espalier.followup.LetterLanguage;
import org.espalier.followup.LetterOffer;
import org.espalier.followup.LetterRefusal;
import org.espalier.followup.LetterService;
import org.espalier.kit.Texts;
import org.espalier.kit.Urls;
import org.espalier.patient.Child;

/** Letters and the calendar file for the family, in its language. */
final class LetterPanel extends Composite<Section> {

    private final Child child;
    private final transient LetterService letters;
    private final Select<LetterLanguage> language = new Select<>();
    private final UnorderedList links = new UnorderedList();

    LetterPanel(Child child, LetterService letters, String familyLanguage) {
        this.child = child;
        this.letters = letters;
        language.setLabel(Texts.text("followup.letter.language"));
        language.setItems(LetterLanguage.values());
        language.setItemLabelGenerator(Texts::of);
        language.addValueChangeListener(change -> show());
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

    /** What cannot be written stands there with the reason and what to do. */
    void show() {
        links.removeAll();
        var spoken = "language=" + language.getValue().name();
        var offers = letters.offers(child);
        offers.forEach(offer ->
                links.add(entry(offer, "letter?kind=" + offer.kind().name() + "&" + spoken, Texts.of(offer.kind()))));
        links.add(new ListItem(link("plate-card?" + spoken, Texts.text("followup.plate-card"))));
        offers.stream()
                .filter(offer -> offer.kind() == LetterKind.INVITATION)
                .forEach(date -> links.add(entry(date, "calendar?" + spoken, Texts.text("followup.calendar"))));
    }

    private ListItem entry(LetterOffer offer, String address, String text) {
        return offer.refusal()
                .map(refusal -> new ListItem(refused(text, refusal)))
                .orElseGet(() -> new ListItem(link(address, text)));
    }

    private static Span refused(String text, LetterRefusal refusal) {
        var why = refusal == LetterRefusal.NO_LETTERHEAD
                ? new Anchor(Urls.LIMITS, Texts.of(refusal))
                : new Span(Texts.of(refusal));
        why.addClassName("small");
        return new Span(new Span(text), why);
    }

    private Anchor link(String address, String text) {
        var link = new Anchor("api/children/" + child.id().value() + "/" + address, text);
        link.setRouterIgnore(true);
        link.setTarget(AnchorTarget.BLANK);
        return link;
    }
}
