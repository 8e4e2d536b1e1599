package org.espalier.opinion.ui;

import com.vaadin.flow.component.HtmlContainer;
import com.vaadin.flow.component.Tag;

/** A clip with the browser's own controls, without sound. */
@Tag("video")
class ClipPlayer extends HtmlContainer {

    ClipPlayer(String address, String name) {
        addClassName("clip");
        getElement()
                .setAttribute("src", address)
                .setAttribute("controls", true)
                .setAttribute("muted", true)
                .setAttribute("playsinline", true)
                .setAttribute("preload", "metadata")
                .setAttribute("disablepictureinpicture", true)
                .setAttribute("controlslist", "nodownload noremoteplayback")
                .setAttribute("aria-label", name);
    }

    /** Calls back when it was played to its end. */
    void onEnd(Runnable ended) {
        getElement().addEventListener("ended", heard -> ended.run());
    }
}
