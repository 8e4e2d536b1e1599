package org.espalier.kit;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.ScrollIntoViewOption;
import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.BeforeEnterObserver;
import com.vaadin.flow.router.HasDynamicTitle;
import com.vaadin.flow.router.QueryParameters;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * A screen among several places of one hospital: which hospital, its places, what was answered last, and its parts,
 * shown anew after each deed. The address says which hospital, and of what.
 *
 * @param <S> what a hospital is to the screen
 */
public abstract class PlacesPage<S> extends Composite<Div> implements BeforeEnterObserver, HasDynamicTitle {

    private final String title;
    private final H1 heading = new H1();
    private final Div answer = new Div();
    private final Div body = new Div();
    private transient Optional<S> here = Optional.empty();
    private Map<String, String> asked = Map.of();

    protected PlacesPage(String title, String className) {
        this.title = title;
        answer.getElement().setAttribute("role", "status");
        answer.setVisible(false);
        body.addClassName("parts");
        getContent().addClassNames("screen", className);
    }

    @Override
    public final void beforeEnter(BeforeEnterEvent event) {
        asked = event.getLocation().getQueryParameters().getParameters().entrySet().stream()
                .collect(Collectors.toMap(
                        Map.Entry::getKey, one -> one.getValue().getFirst()));
        List<S> mine = hospitals();
        here = asked("site")
                .flatMap(wanted ->
                        mine.stream().filter(one -> code(one).equals(wanted)).findFirst())
                .or(() -> mine.stream().findFirst());
        heading.setText(Texts.text(title));
        getContent().removeAll();
        getContent().add(top(mine, event.getLocation().getPath()), places(here, title), answer, body);
        refresh();
    }

    /** The heading, and where there is a choice of hospitals, the choice. */
    private Component top(List<S> hospitals, String place) {
        var top = new Div(heading);
        top.addClassName("screen-head");
        if (hospitals.size() > 1) {
            var choice = new Select<S>();
            choice.setLabel(Texts.text("kit.hospital"));
            choice.setItems(hospitals);
            choice.setItemLabelGenerator(this::name);
            here.ifPresent(choice::setValue);
            choice.addValueChangeListener(change -> goTo(place, code(change.getValue())));
            choice.addClassNames("hospital", "no-print");
            top.add(choice);
        }
        return top;
    }

    /** The same place at another hospital. */
    private void goTo(String place, String hospital) {
        var there = elsewhere(place);
        var asks = new HashMap<String, String>(there.equals(place) ? asked : Map.of());
        asks.put("site", hospital);
        UI.getCurrent().navigate(there, QueryParameters.simple(asks));
    }

    /** What the address asks for under a name. */
    protected final Optional<String> asked(String name) {
        return Optional.ofNullable(asked.get(name));
    }

    @Override
    public final String getPageTitle() {
        return Texts.page(title);
    }

    protected final void head(String text) {
        heading.setText(text);
    }

    /** Shows the parts anew. */
    protected final void refresh() {
        body.removeAll();
        here.ifPresentOrElse(site -> show(site, body), () -> body.add(nowhere()));
    }

    protected final void say(String text, boolean harm) {
        answer.setVisible(true);
        answer.setText(text);
        answer.setClassName("notice");
        answer.setClassName("harm", harm);
        answer.scrollIntoView(ScrollIntoViewOption.Block.NEAREST);
    }

    /** The hospitals to choose from; the first is meant where the address names none of them. */
    protected abstract List<S> hospitals();

    protected abstract String code(S hospital);

    protected abstract String name(S hospital);

    /** Where the reader of this place goes at another hospital. */
    protected abstract String elsewhere(String place);

    /** The places, of which the one of the title is here. */
    protected abstract Component places(Optional<S> site, String title);

    /** What stands there when there is no hospital. */
    protected abstract Component nowhere();

    /** Shows the parts of the screen for a hospital. */
    protected abstract void show(S site, Div body);
}
