package org.espalier.kit;

import com.vaadin.flow.component.Component;

/** On a narrow screen a row of places is longer than the glass: the one shown is not left outside. */
public final class IntoView {

    /** Sizes settle while style and letters arrive; after that the row is the reader's own. */
    private static final String WHILE_IT_SETTLES = """
            const sizes = new ResizeObserver(() => this.scrollIntoView({ inline: 'center', block: 'nearest' }));
            sizes.observe(this);
            setTimeout(() => sizes.disconnect(), 2000);
            """;

    private IntoView() {}

    /** Moves the row so that the place is seen; the page itself stays where it is. */
    public static void bring(Component place) {
        place.getElement().executeJs(WHILE_IT_SETTLES);
    }
}
