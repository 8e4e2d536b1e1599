package org.espalier.film.ui;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.dependency.StyleSheet;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.html.Image;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.OrderedList;
import com.vaadin.flow.router.HasDynamicTitle;
import com.vaadin.flow.router.Route;
import java.util.stream.IntStream;
import org.espalier.kit.PageParts;
import org.espalier.kit.Texts;
import org.espalier.kit.Urls;

/** The card for the wall of the room: patella forward, not the feet. Prints on one page. */
@Route(Urls.PATELLA_CARD)
@StyleSheet("themes/film.css")
class PatellaCardView extends Composite<Div> implements HasDynamicTitle {

    private static final int STEPS = 6;

    PatellaCardView() {
        var steps = new OrderedList();
        IntStream.rangeClosed(1, STEPS).forEach(step -> steps.add(new ListItem(Texts.text("film.card.step." + step))));
        var why = PageParts.paragraph("why", Texts.text("film.card.why"));
        var drawing = new Image("assets/patella-forward.svg", Texts.text("film.card.drawing"));
        var card = new Div(new H1(Texts.text("film.card")), drawing, steps, why);
        card.addClassName("patella-card");
        var print = new Button(
                Texts.text("film.card.print"),
                click -> UI.getCurrent().getPage().executeJs("window.print()"));
        var back = new Anchor(Urls.WORKLIST, Texts.text("film.card.back"));
        var actions = new Div(print, back);
        actions.addClassNames("actions", "screen-only");
        getContent().addClassName("screen");
        getContent().add(actions, card);
    }

    @Override
    public String getPageTitle() {
        return Texts.page("film.card");
    }
}
