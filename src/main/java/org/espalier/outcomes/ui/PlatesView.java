package org.espalier.outcomes.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.Text;
import com.vaadin.flow.component.dependency.StyleSheet;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.router.Route;
import java.util.Map;
import org.espalier.access.Site;
import org.espalier.access.SiteService;
import org.espalier.kit.DateText;
import org.espalier.kit.LineTable;
import org.espalier.kit.PageParts;
import org.espalier.kit.Texts;
import org.espalier.kit.Urls;
import org.espalier.outcomes.OutcomeService;
import org.espalier.outcomes.PlateCourse;
import org.espalier.treatment.TreatmentText;

/** Which plates stand behind the figures? Of the reader's own hospital alone, by the course and not by name. */
@Route(Urls.OUTCOMES_PLATES)
@StyleSheet("themes/patient.css")
@StyleSheet("themes/outcomes.css")
class PlatesView extends OutcomePage {

    PlatesView(OutcomeService outcomes, SiteService sites) {
        super(outcomes, sites, "outcomes.plates");
    }

    @Override
    protected void show(Site here, Div body) {
        var span = span(here);
        body.add(
                PageParts.said(Texts.text("outcomes.plates.question")),
                years(Urls.OUTCOMES_PLATES, here, Map.of()),
                new LineTable<OutcomeService.Listed>("outcomes.plates.none")
                        .text("outcomes.placed", one -> DateText.of(one.plate().plateOn()))
                        .text(
                                "outcomes.physis",
                                one -> TreatmentText.of(one.plate().physis()))
                        .text("outcomes.end", one -> came(one.plate()))
                        .text("outcomes.to-day", one -> DateText.of(one.plate().to()))
                        .text(
                                "outcomes.stood",
                                one -> OutcomeText.past(one.plate().past()))
                        .text("outcomes.two-years", one -> after(one.plate()))
                        .show("outcomes.course", PlatesView::course)
                        .faded(one -> one.plate().leftOut().isPresent())
                        .ordered("outcomes.ordered.placed")
                        .with(outcomes().plates(here.id(), span)),
                PageParts.said(Texts.text("outcomes.plates.how")));
    }

    private static String came(PlateCourse plate) {
        return plate.leftOut()
                .map(why -> Texts.text(why, 1))
                .orElseGet(() -> plate.came().map(Texts::of).orElseGet(() -> Texts.text("outcomes.runs")));
    }

    private static String after(PlateCourse plate) {
        return plate.drift().isPresent()
                ? Texts.text("outcomes.drift-by", plate.drift().getAsDouble())
                : Texts.of(plate.after());
    }

    private static Component course(OutcomeService.Listed one) {
        if (!one.here()) {
            return new Text(Texts.text("outcomes.moved-on"));
        }
        var link = new Anchor(Urls.course(one.plate().child().value()), Texts.text("outcomes.open-course"));
        link.setAriaLabel(Texts.text(
                "outcomes.open-course.of",
                TreatmentText.of(one.plate().physis()),
                DateText.of(one.plate().plateOn())));
        return link;
    }
}
