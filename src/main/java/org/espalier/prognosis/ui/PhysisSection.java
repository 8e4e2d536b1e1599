package org.espalier.prognosis.ui;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.html.Article;
import com.vaadin.flow.component.html.H3;
import com.vaadin.flow.component.html.Paragraph;
import java.time.LocalDate;
import java.util.List;
import org.espalier.kit.DateText;
import org.espalier.kit.PageParts;
import org.espalier.kit.Texts;
import org.espalier.prognosis.AngleSpread;
import org.espalier.prognosis.Forecast;
import org.espalier.prognosis.Outlook;
import org.espalier.prognosis.PhysisPrognosis;
import org.espalier.prognosis.Resting;
import org.espalier.science.forecast.Deformity;
import org.espalier.science.forecast.PhysisSite;
import org.espalier.science.quantity.Angle;

/** Where one physis is going. */
class PhysisSection extends Composite<Article> {

    PhysisSection(PhysisPrognosis physis, ShownDays days) {
        getContent().addClassName("prognosis-physis");
        getContent()
                .add(new H3(Texts.text(
                        "prognosis.physis.state",
                        PrognosisText.physis(physis.physis()),
                        Texts.text("prognosis.state." + physis.state().name()))));
        var facts = new FactList();
        physis.last()
                .ifPresent(film -> facts.with(Texts.text("prognosis.label.last"), PrognosisText.last(physis, film)));
        switch (physis.outlook()) {
            case Forecast forecast -> show(forecast, days, facts);
            case Resting resting -> show(resting, days, facts);
            case Outlook.None(var reason) -> facts.with(Texts.text("prognosis.label.outlook"), Texts.of(reason));
        }
        physis.growth()
                .forEach(growth -> facts.with(Texts.text("prognosis.label.growth"), PrognosisText.growth(growth)));
        physis.window()
                .ifPresent(window ->
                        facts.with(Texts.text("prognosis.label.window"), PrognosisText.window(window, days.today())));
        getContent().add(facts);
    }

    private void show(Forecast forecast, ShownDays days, FactList facts) {
        if (!forecast.isPlaced()) {
            getContent().add(new Paragraph(Texts.text("prognosis.if-placed", Texts.of(forecast.corrects()))));
        }
        getContent().add(table(forecast, days));
        if (forecast.site() == PhysisSite.DISTAL_FEMUR && forecast.corrects() == Deformity.VARUS) {
            getContent().add(PageParts.caution("prognosis.femur-varus"));
        }
        facts.with(Texts.text("prognosis.label.today"), PrognosisText.left(forecast, days.today()));
        facts.with(Texts.text("prognosis.label.arrival"), PrognosisText.arrival(forecast.arrival()));
        facts.with(Texts.text("prognosis.label.failing"), PrognosisText.failing(forecast));
        if (forecast.isPlaced()) {
            facts.with(Texts.text("prognosis.label.plate"), DateText.of(forecast.plateOn()));
        }
    }

    private void show(Resting resting, ShownDays days, FactList facts) {
        var lines = days.all().stream()
                .map(day -> line(day, resting.angle(day), PrognosisText.left(resting, day)))
                .toList();
        getContent().add(new AngleTable(caption(resting.site(), resting.target()), lines));
        facts.with(Texts.text("prognosis.label.after"), PrognosisText.after(resting));
    }

    private static AngleTable table(Forecast forecast, ShownDays days) {
        List<AngleTable.Line> lines = days.until(forecast.growthEnds()).stream()
                .map(day -> line(day, forecast.angle(day), PrognosisText.left(forecast, day)))
                .toList();
        return new AngleTable(caption(forecast.site(), forecast.target()), lines);
    }

    private static String caption(PhysisSite site, Angle target) {
        return Texts.text("prognosis.caption.angle", Texts.text("prognosis.site." + site.name()), target.degrees());
    }

    private static AngleTable.Line line(LocalDate day, AngleSpread spread, String left) {
        return new AngleTable.Line(
                day,
                PrognosisText.angle(spread.middle()) + ", " + left,
                PrognosisText.half(spread),
                PrognosisText.most(spread));
    }
}
