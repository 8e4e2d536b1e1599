package org.espalier.kit;

import com.vaadin.flow.component.Component;

/** On a narrow screen a row of places is longer than the glass: the one shown is not left outside. */
public final class IntoView {

    private IntoView() {}

    /** Moves the row so that the place is seen, again when style and letters arrive; the page itself stays. */
    public static void bring(Component place) {
        var at = place.getElement();
        at.executeJs("new ResizeObserver(_ => this.scrollIntoView({inline:'center',block:'nearest'})).observe(this)");
    }
}
