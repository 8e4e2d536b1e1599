package org.espalier.reading.ui;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.dependency.StyleSheet;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.BeforeEnterObserver;
import com.vaadin.flow.router.HasDynamicTitle;
import com.vaadin.flow.router.NotFoundException;
import com.vaadin.flow.router.Route;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.espalier.film.Film;
import org.espalier.film.FilmId;
import org.espalier.kit.Address;
import org.espalier.kit.DateText;
import org.espalier.kit.IdentityBanner;
import org.espalier.kit.PageParts;
import org.espalier.kit.Texts;
import org.espalier.kit.Urls;
import org.espalier.reading.Comparison;
import org.espalier.reading.Comparison.Compared;
import org.espalier.reading.ComparisonService;
import org.espalier.science.quantity.PixelScale;

/** What became of this limb from one film to another? Both films side by side, and the numbers of both. */
@Route("compare/:film/:other")
@StyleSheet("themes/film-room-page.css")
class ComparisonView extends Composite<Div> implements BeforeEnterObserver, HasDynamicTitle {

    private final ComparisonService comparisons;

    ComparisonView(ComparisonService comparisons) {
        this.comparisons = comparisons;
        getContent().addClassNames("film-room-page", "comparison-page");
    }

    @Override
    public String getPageTitle() {
        return Texts.page("reading.compare.title");
    }

    @Override
    public void beforeEnter(BeforeEnterEvent event) {
        var one = film(event, "film");
        var other = film(event, "other");
        build(one.flatMap(film -> other.flatMap(second -> comparisons.open(film, second)))
                .orElseThrow(NotFoundException::new));
    }

    private void build(Comparison comparison) {
        var both = List.of(comparison.earlier(), comparison.later());
        var page = getContent();
        page.removeAll();
        page.add(new IdentityBanner(comparison.child().who(), comparison.today()), head(comparison, both));
        notes(comparison, both).forEach(key -> page.add(PageParts.paragraph("notice", Texts.text(key))));
        page.add(new FilmPair(both.stream()
                .map(compared -> film(compared, comparison.isToScale()))
                .toList()));
        page.add(new ComparisonTable(comparison), PageParts.caution("reading.compare.caution"));
    }

    private static Div head(Comparison comparison, List<Compared> both) {
        var heading = new H1(Texts.text("reading.compare.heading", day(both.getFirst()), day(both.getLast())));
        var head = new Div(heading);
        head.addClassName("room-head");
        head.add(new Anchor(Urls.course(comparison.child().id().value()), Texts.text("reading.to-course")));
        head.add(
                choice("reading.compare.earlier", comparison, comparison.earlier(), comparison.later()),
                choice("reading.compare.later", comparison, comparison.later(), comparison.earlier()));
        both.forEach(compared -> head.add(new Anchor(
                Urls.film(compared.film().id().value()), Texts.text("reading.compare.to-film", day(compared)))));
        return head;
    }

    /** Any other film of the child in place of this one, beside the same other. */
    private static Select<Film> choice(String label, Comparison comparison, Compared here, Compared beside) {
        var choice = new Select<Film>();
        choice.setLabel(Texts.text(label));
        choice.setItems(comparison.films().stream()
                .filter(film -> !film.id().equals(beside.film().id()))
                .toList());
        choice.setItemLabelGenerator(ComparisonView::day);
        choice.setValue(comparison.films().stream()
                .filter(film -> film.id().equals(here.film().id()))
                .findFirst()
                .orElseThrow());
        choice.addValueChangeListener(change -> UI.getCurrent()
                .navigate(Urls.compare(
                        change.getValue().id().value(), beside.film().id().value())));
        return choice;
    }

    private static List<String> notes(Comparison comparison, List<Compared> both) {
        var scale = Stream.of(comparison.isToScale() ? "reading.compare.same-scale" : "reading.compare.same-height");
        var alike = comparison.isToScale() && !comparison.isScaledAlike()
                ? Stream.of("reading.compare.scales-differ")
                : Stream.<String>empty();
        var ways = comparison.isOfTwoWays() ? Stream.of("reading.compare.two-ways") : Stream.<String>empty();
        var unread = both.stream().anyMatch(compared -> compared.limbs().isEmpty())
                ? Stream.of("reading.compare.unread")
                : Stream.<String>empty();
        return Stream.of(scale, alike, ways, unread).flatMap(notes -> notes).toList();
    }

    private static FilmPair.Film film(Compared compared, boolean toScale) {
        var scale = toScale ? compared.calibration().scale() : Optional.<PixelScale>empty();
        return new FilmPair.Film(
                compared.film().id().value().toString(),
                Texts.text(
                        "reading.compare.caption",
                        day(compared),
                        compared.age().map(DateText::of).orElseGet(() -> Texts.text("kit.not-known"))),
                scale.map(pixel -> pixel.millimetresPerPixelX()).orElse(null),
                compared.landmarks().stream()
                        .map(placed -> new FilmPair.Mark(
                                placed.side() + " " + placed.landmark(),
                                placed.side(),
                                Texts.text(
                                        "reading.pair.mark",
                                        Texts.of(placed.side()),
                                        Texts.text("reading.landmark." + placed.landmark())),
                                placed.at().x(),
                                placed.at().y()))
                        .toList());
    }

    static String day(Compared compared) {
        return day(compared.film());
    }

    private static String day(Film film) {
        return film.takenOn().map(DateText::of).orElseGet(() -> Texts.text("reading.compare.no-day"));
    }

    private static Optional<FilmId> film(BeforeEnterEvent event, String parameter) {
        return Address.id(event, parameter).map(FilmId::new);
    }
}
