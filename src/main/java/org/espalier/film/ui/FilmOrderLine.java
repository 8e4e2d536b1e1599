package org.espalier.film.ui;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.html.UnorderedList;
import java.time.LocalDate;
import java.util.List;
import java.util.function.BiConsumer;
import org.espalier.film.FilmHappening;
import org.espalier.film.FilmOrder;
import org.espalier.film.FilmWish;
import org.espalier.kit.PageParts;
import org.espalier.kit.Texts;

/** One order: what is to be taken, what became of it, and what can be written down of it. */
final class FilmOrderLine extends Composite<Div> {

    /**
     * @param whose the child, as it is named in a question before anything is written down
     * @param deeds what the reader may write down
     * @param happened what happens with it
     */
    FilmOrderLine(
            FilmOrder order,
            LocalDate today,
            String whose,
            List<StepDialog.Deed> deeds,
            BiConsumer<FilmOrder, FilmHappening> happened) {
        getContent().addClassName("film-order");
        if (order.wish() instanceof FilmWish.NoFilm) {
            getContent().addClassName("no-film");
        }
        getContent().add(PageParts.paragraph("what", FilmOrderText.of(order.wish())));
        FilmOrderText.reason(order.wish()).ifPresent(reason -> getContent().add(new Paragraph(reason)));
        var by = order.by() == null ? Texts.text("film.by.house") : order.by();
        var asked = new Span(Texts.text("film.order.asked", FilmOrderText.day(order.forDay(), today), by));
        asked.addClassName("small");
        getContent().add(asked);
        if (!order.steps().isEmpty()) {
            var steps = new UnorderedList();
            order.steps().forEach(step -> steps.add(new ListItem(FilmOrderText.of(step))));
            getContent().add(steps);
        }
        if (order.isOpen()) {
            var actions = new Div();
            actions.addClassName("actions");
            deeds.forEach(deed -> actions.add(new Button(Texts.of(deed), click -> new StepDialog(
                            deed,
                            Texts.text("film.step.whose", whose, FilmOrderText.of(order.wish())),
                            happening -> happened.accept(order, happening))
                    .open())));
            getContent().add(actions);
        }
    }
}
