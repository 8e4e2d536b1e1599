package org.espalier.outcomes.ui;

import com.vaadin.flow.component.Component;
import java.util.List;
import org.espalier.kit.LineTable;
import org.espalier.kit.PageParts;
import org.espalier.kit.Texts;

/**
 * A figure with what it is and how it was come to.
 *
 * @param name by which both are named among the texts
 */
record Figure(String name, String told) {

    static Figure count(String name, int count) {
        return new Figure(name, String.valueOf(count));
    }

    /** Under a heading, line by line. */
    static Component part(String heading, Figure... figures) {
        return PageParts.part(
                Texts.text(heading),
                new LineTable<Figure>("outcomes.results.none")
                        .text("outcomes.figure", figure -> Texts.text("outcomes.what." + figure.name()))
                        .text("outcomes.told", Figure::told)
                        .text("outcomes.method", figure -> Texts.text("outcomes.how." + figure.name()))
                        .with(List.of(figures)));
    }
}
