package org.espalier.kit;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.BeforeEnterObserver;
import com.vaadin.flow.router.HasDynamicTitle;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * A screen among several places of one hospital: its places, what was answered last, and its parts, shown anew after
 * each deed. The address says which hospital, and of what.
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
        here = here(asked("site"));
        heading.setText(Texts.text(title));
        getContent().removeAll();
        getContent().add(heading, places(here, title), answer, body);
        refresh();
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
    }

    /** The hospital of the code, or the one that is meant without. */
    protected abstract Optional<S> here(Optional<String> code);

    /** The places, of which the one of the title is here. */
    protected abstract Component places(Optional<S> site, String title);

    /** What stands there when there is no hospital. */
    protected abstract Component nowhere();

    /** Shows the parts of the screen for a hospital. */
    protected abstract void show(S site, Div body);
}
