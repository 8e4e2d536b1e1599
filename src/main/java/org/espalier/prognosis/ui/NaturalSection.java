package org.espalier.prognosis.ui;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.html.Article;
import com.vaadin.flow.component.html.H3;
import com.vaadin.flow.component.html.Paragraph;
import java.time.LocalDate;
import org.espalier.kit.DateText;
import org.espalier.kit.QuantityText;
import org.espalier.kit.Texts;
import org.espalier.prognosis.NaturalOutlook;

/** Where a young limb goes by itself. */
class NaturalSection extends Composite<Article> {

    NaturalSection(NaturalOutlook natural, ShownDays days) {
        getContent().addClassName("prognosis-limb");
        var facts = new FactList()
                .with(
                        Texts.text("prognosis.label.last"),
                        Texts.text(
                                "prognosis.natural.last",
                                QuantityText.ofDeviation(natural.lastAngle()),
                                DateText.of(natural.lastOn()),
                                place(natural.place())))
                .with(
                        Texts.text("prognosis.label.natural.turn"),
                        PrognosisText.turn(natural.turnInSixMonths(days.today())));
        natural.trend()
                .ifPresentOrElse(
                        trend -> facts.with(Texts.text("prognosis.label.natural.trend"), trend(trend)),
                        () -> facts.with(
                                Texts.text("prognosis.label.natural.trend"), Texts.text("prognosis.natural.one-film")));
        var lines = days.all().stream().map(day -> line(natural, day)).toList();
        getContent()
                .add(
                        new H3(Texts.text("prognosis.natural.heading")),
                        new AngleTable(Texts.text("prognosis.natural.caption", Texts.of(natural.side())), lines),
                        facts,
                        new Paragraph(Texts.text("prognosis.natural.caution")));
    }

    private static AngleTable.Line line(NaturalOutlook natural, LocalDate day) {
        var spread = natural.angle(day);
        return new AngleTable.Line(
                day,
                QuantityText.ofDeviation(spread.middle()),
                PrognosisText.halfDeviation(spread),
                PrognosisText.mostDeviation(spread));
    }

    private static String place(double bowed) {
        return Texts.text(
                bowed >= 0 ? "prognosis.natural.place.bowed" : "prognosis.natural.place.knocked", Math.abs(bowed));
    }

    private static String trend(NaturalOutlook.Trend trend) {
        var words = Texts.text(
                "prognosis.natural.trend",
                DateText.of(trend.from()),
                PrognosisText.turn(trend.seen()),
                PrognosisText.turn(trend.expected()));
        return trend.isBehind() ? Texts.text("prognosis.natural.behind", words, NaturalOutlook.LAG_POINTED_OUT) : words;
    }
}
