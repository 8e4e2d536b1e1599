package org.espalier.plan.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.details.Details;
import com.vaadin.flow.component.html.Article;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.H3;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Section;
import java.util.List;
import org.espalier.kit.DateText;
import org.espalier.kit.PageParts;
import org.espalier.kit.Texts;
import org.espalier.plan.Intent;
import org.espalier.plan.SavedComparison;

/** What was compared, meant and expected before, as it was said then. */
class SavedList extends Composite<Section> {

    SavedList(List<SavedComparison> saved) {
        getContent().addClassName("plan-saved");
        getContent().add(new H2(Texts.text("plan.saved.heading")));
        if (saved.isEmpty()) {
            getContent().add(PageParts.paragraph("empty", Texts.text("plan.saved.none")));
        }
        saved.forEach(one -> getContent().add(entry(one)));
    }

    private static Component entry(SavedComparison saved) {
        var line = Texts.text("plan.saved.line", DateText.of(saved.on()), Texts.of(saved.side()), saved.by());
        return new Article(
                new H3(line),
                new Paragraph(
                        saved.intent().map(Intent::inWords).orElseGet(() -> Texts.text("plan.saved.options-only"))),
                new Details(Texts.text("plan.saved.open"), new OptionsTable(line, saved.options())));
    }
}
