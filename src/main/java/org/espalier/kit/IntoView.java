package org.espalier.kit;

import com.vaadin.flow.component.Component;

/** On a narrow screen a row of places is longer than the glass: the one shown is not left outside. */
public final class IntoView {

    private IntoView() {}

    /** Moves the row so that the place is seen; the page itself stays where it is. */
    public static void bring(Component place) {
        place.getElement().executeJs("this.scrollIntoView({ inline: 'center', block: 'nearest' })");
    }
}
