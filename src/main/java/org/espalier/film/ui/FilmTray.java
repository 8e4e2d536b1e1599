package org.espalier.film.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Image;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.html.UnorderedList;
import java.time.LocalDate;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.espalier.access.Site;
import org.espalier.film.FilmState;
import org.espalier.film.TrayItem;
import org.espalier.kit.DateText;
import org.espalier.kit.PageParts;
import org.espalier.kit.Texts;
import org.jspecify.annotations.Nullable;

/** Films that lie in one part of the tray, the latest first, each with what it says about itself. */
final class FilmTray extends Composite<Section> {

    private final H2 heading = new H2();
    private final Paragraph order = new Paragraph();
    private final UnorderedList list = new UnorderedList();
    private final Div empty = new Div();
    private final Words words;
    private final Consumer<TrayItem> assign;

    /**
     * The keys of a part's words.
     *
     * @param heading takes the number of films
     */
    record Words(String heading, String order, String empty) {}

    /**
     * @param assign what happens when a film is to be given to a child
     */
    FilmTray(Words words, Consumer<TrayItem> assign) {
        this.words = words;
        this.assign = assign;
        list.addClassName("tray");
        order.addClassName("small");
        empty.addClassName("empty");
        empty.setText(Texts.text(words.empty()));
        getContent().add(heading, order, list, empty);
    }

    void show(List<TrayItem> items, Site site) {
        heading.setText(Texts.text(words.heading(), items.size()));
        order.setText(Texts.text(words.order()));
        order.setVisible(!items.isEmpty());
        empty.setVisible(items.isEmpty());
        list.removeAll();
        items.forEach(item -> list.add(new ListItem(picture(item), facts(item, site), deed(item))));
    }

    private static Component picture(TrayItem item) {
        if (item.state() == FilmState.KEPT_ASIDE) {
            var none = new Div();
            none.addClassName("no-picture");
            none.getElement().setAttribute("aria-hidden", "true");
            return none;
        }
        var picture = new Image("api/films/" + item.film().value() + "/thumbnail", Texts.text("film.thumbnail"));
        picture.getElement().setAttribute("loading", "lazy");
        return picture;
    }

    private static Div facts(TrayItem item, Site site) {
        var label = item.label();
        var name = new Span(label.patientName() == null ? Texts.text("film.no-name") : readable(label.patientName()));
        name.addClassName("name");
        var facts = new Div(name);
        facts.addClassName("facts-of-film");
        facts.add(
                fact("kit.number", label.localNumber()),
                fact("film.born", day(label.birthDate())),
                fact("film.taken-on", day(item.takenOn().orElse(null))),
                fact(
                        "film.came-on",
                        DateText.of(item.receivedAt().atZone(site.zone()).toLocalDate())),
                fact("film.file", item.originalName()));
        var says = Stream.of(label.studyDescription(), label.seriesDescription())
                .flatMap(Stream::ofNullable)
                .distinct()
                .collect(Collectors.joining(" · "));
        if (!says.isEmpty()) {
            facts.add(fact("film.says", says));
        }
        item.aside().ifPresent(reason -> facts.add(reason(Texts.of(reason))));
        return facts;
    }

    private static Paragraph reason(String words) {
        var reason = PageParts.paragraph("soon", words);
        return reason;
    }

    private Component deed(TrayItem item) {
        return item.aside().isPresent()
                ? new Span()
                : new Button(Texts.text("film.assign"), click -> assign.accept(item));
    }

    /** DICOM parts a name by carets. */
    static String readable(String name) {
        return name.replace('=', ' ').replace('^', ' ').strip();
    }

    private static @Nullable String day(@Nullable LocalDate day) {
        return day == null ? null : DateText.of(day);
    }

    private static Span fact(String label, @Nullable String value) {
        var quiet = new Span(Texts.text(label));
        quiet.addClassName("label");
        return new Span(quiet, new Span(value == null || value.isEmpty() ? Texts.text("kit.not-known") : value));
    }
}
