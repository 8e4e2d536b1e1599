package org.espalier.opinion.ui;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Section;
import java.util.List;
import org.espalier.kit.PageParts;
import org.espalier.kit.Texts;
import org.espalier.opinion.OpinionThread;
import org.espalier.opinion.ShownClip;
import org.espalier.opinion.ThreadId;

/** The clips of walking. One that plays goes on while the rest of the page is read again. */
class ClipsPart extends Composite<Section> {

    private final ThreadId thread;
    private final Div clips = new Div();
    private List<ShownClip> shown = List.of();

    ClipsPart(ThreadId thread) {
        this.thread = thread;
        clips.addClassName("clips");
        getContent().addClassName("sheet");
        getContent()
                .add(
                        new H2(Texts.text("opinion.clips")),
                        clips,
                        PageParts.paragraph("small", Texts.text("opinion.clips.note")));
    }

    void show(OpinionThread open) {
        getContent().setVisible(!open.clips().isEmpty());
        if (!shown.equals(open.clips())) {
            shown = open.clips();
            clips.removeAll();
            shown.forEach(clip -> clips.add(clip(clip)));
        }
    }

    private Div clip(ShownClip clip) {
        var title = Texts.text(
                "opinion.clip.title",
                Parts.atMonth(clip.title(), clip.months()),
                Math.max(1, Math.round(clip.copy().length().toMillis() / 1000.0)));
        var address = "api/opinions/" + thread.value() + "/clips/" + clip.id();
        return new Div(PageParts.paragraph("name", title), new ClipPlayer(address, title));
    }
}
