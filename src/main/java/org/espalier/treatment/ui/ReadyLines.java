package org.espalier.treatment.ui;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.html.Div;
import java.time.LocalDate;
import java.util.List;
import org.espalier.access.SiteId;
import org.espalier.kit.DateText;
import org.espalier.kit.PageParts;
import org.espalier.kit.Texts;
import org.espalier.stock.Coverage;
import org.espalier.stock.ProductText;
import org.espalier.treatment.StandingPlan;

/** What is kept ready for a planned operation, and what of it is missing. */
final class ReadyLines extends Composite<Div> {

    ReadyLines(StandingPlan plan, Desk desk, SiteId site) {
        this(plan, desk.reservations().coverage(site));
    }

    ReadyLines(StandingPlan plan, List<Coverage.Met> coverage) {
        var kept = coverage.stream()
                .filter(met -> met.reservation().holder().equals(plan.first().value()))
                .toList();
        if (kept.isEmpty()) {
            getContent().add(PageParts.paragraph("small", Texts.text("treatment.ready.none")));
        }
        kept.stream().map(met -> met.reservation().neededOn()).findFirst().ifPresent(day -> getContent()
                .add(PageParts.paragraph("small", day(day, plan))));
        kept.forEach(met -> getContent()
                .add(PageParts.paragraph(
                        met.missing() == 0 ? "small" : "soon",
                        Texts.text(
                                met.missing() == 0 ? "treatment.ready.enough" : "treatment.ready.missing",
                                ProductText.of(met.need()),
                                met.need().quantity(),
                                met.missing()))));
    }

    private static String day(LocalDate day, StandingPlan plan) {
        return Texts.text(
                day.equals(plan.plan().theatreOn()) ? "treatment.ready.for" : "treatment.ready.for-other-day",
                DateText.of(day));
    }
}
