package org.espalier.film.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.dependency.StyleSheet;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.spring.annotation.SpringComponent;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.espalier.film.FilmHappening;
import org.espalier.film.FilmOrder;
import org.espalier.film.FilmOrderId;
import org.espalier.film.FilmOrderService;
import org.espalier.film.FilmService;
import org.espalier.film.FilmWish;
import org.espalier.kit.ExaminationPart;
import org.espalier.kit.IdentityBanner;
import org.espalier.kit.PageParts;
import org.espalier.kit.Texts;
import org.espalier.kit.Who;
import org.espalier.patient.ChildId;
import org.espalier.platform.Ids;
import org.springframework.core.annotation.Order;

/** Films asked for of one child, on the page on which the child is examined. */
@SpringComponent
@Order(10)
class FilmOrdersPart implements ExaminationPart {

    private static final int SHOWN = 5;

    private final FilmOrderService orders;
    private final FilmService films;
    private final Ids ids;

    FilmOrdersPart(FilmOrderService orders, FilmService films, Ids ids) {
        this.orders = orders;
        this.films = films;
        this.ids = ids;
    }

    @Override
    public Component of(UUID child, Who who, LocalDate today) {
        return new Orders(new ChildId(child), IdentityBanner.name(who), today);
    }

    /** The orders of one child on the screen. */
    @StyleSheet("themes/film.css")
    private final class Orders extends Composite<Section> {

        private final ChildId child;
        private final String name;
        private final LocalDate today;
        private final Div list = new Div();
        private final Div answer = new Div();

        Orders(ChildId child, String name, LocalDate today) {
            this.child = child;
            this.name = name;
            this.today = today;
            var head = new Div(
                    new H2(Texts.text("film.orders")), new Button(Texts.text("film.order.ask"), click -> ask()));
            head.addClassName("part-head");
            answer.getElement().setAttribute("aria-live", "polite");
            getContent().addClassName("sheet");
            getContent().add(head, answer, list);
            refresh();
        }

        private void refresh() {
            list.removeAll();
            var all = orders.of(child);
            if (all.isEmpty()) {
                list.add(PageParts.paragraph("empty", Texts.text("film.orders.empty")));
            }
            all.stream()
                    .limit(SHOWN)
                    .forEach(order -> list.add(
                            new FilmOrderLine(order, today, name, List.of(StepDialog.Deed.WITHDRAWN), this::happened)));
        }

        private void ask() {
            new OrderDialog(today, films.of(child).size(), this::order).open();
        }

        private void order(LocalDate day, FilmWish wish) {
            orders.order(new FilmOrderId(ids.next()), child, day, wish);
            say("film.order.done");
        }

        private void happened(FilmOrder order, FilmHappening what) {
            boolean kept = orders.happened(order.id(), ids.next(), what);
            say(kept ? "film.step.done" : "film.step.ended");
        }

        private void say(String key) {
            answer.removeAll();
            answer.add(PageParts.paragraph("notice", Texts.text(key)));
            refresh();
        }
    }
}
