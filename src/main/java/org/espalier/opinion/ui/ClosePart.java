package org.espalier.opinion.ui;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.AnchorTarget;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Section;
import java.time.ZoneId;
import org.espalier.kit.PageParts;
import org.espalier.kit.Texts;
import org.espalier.opinion.Closing;
import org.espalier.opinion.OpinionThread;
import org.espalier.opinion.Outcome;
import org.espalier.opinion.ThreadId;

/** What was decided and by whom; later what came of it, beside what was advised. */
class ClosePart extends Composite<Section> {

    private final ThreadId thread;
    private final ThreadServices services;
    private final ZoneId zone;
    private final Runnable changed;
    private final Div told = new Div();
    private final Div form = new Div();

    ClosePart(ThreadId thread, ThreadServices services, ZoneId zone, Runnable changed) {
        this.thread = thread;
        this.services = services;
        this.zone = zone;
        this.changed = changed;
        getContent().addClassName("sheet");
        getContent().add(new H2(Texts.text("opinion.decision")), told, form);
    }

    void show(OpinionThread open) {
        told.removeAll();
        open.closing().ifPresent(closing -> tell(open, closing));
        boolean leads = open.mayLead();
        getContent().setVisible(leads || open.closing().isPresent());
        if (leads && open.closing().isEmpty() && form.getComponentCount() == 0) {
            form.add(new ClosingForm(thread, services, changed));
        } else if (open.closing().isPresent()) {
            form.removeAll();
            if (leads && open.outcomes().size() < Outcome.Horizon.values().length) {
                form.add(new OutcomeForm(open, services, changed));
            }
        }
    }

    private void tell(OpinionThread open, Closing closing) {
        told.add(
                PageParts.paragraph("name", Texts.of(closing.decided())),
                PageParts.paragraph("words", closing.text()),
                PageParts.paragraph(
                        "small", Texts.text("opinion.decided-by", closing.decidedBy(), Parts.day(closing.at(), zone))));
        if (open.child().isPresent()) {
            var summary = new Anchor("api/opinions/" + thread.value() + "/summary", Texts.text("opinion.summary"));
            summary.setTarget(AnchorTarget.BLANK);
            summary.setRouterIgnore(true);
            told.add(summary);
        }
        if (!open.opinions().isEmpty()) {
            told.add(OutcomeCards.of(open, closing.decided()));
        }
        open.outcomes().stream()
                .filter(one -> !one.text().isBlank())
                .forEach(one -> told.add(PageParts.paragraph(
                        "words", Texts.text("opinion.paper.line", Texts.of(one.horizon()), one.text()))));
    }
}
