package org.espalier.prognosis.ui;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.html.Article;
import com.vaadin.flow.component.html.H3;
import java.time.LocalDate;
import java.util.List;
import java.util.function.Function;
import org.espalier.kit.QuantityText;
import org.espalier.kit.Texts;
import org.espalier.prognosis.AngleSpread;
import org.espalier.prognosis.LimbOutlook;

/** Where a whole limb is going by femur and tibia together. */
class LimbSection extends Composite<Article> {

    LimbSection(LimbOutlook limb, ShownDays days) {
        getContent().addClassName("prognosis-limb");
        var facts = new FactList();
        facts.with(Texts.text("prognosis.label.straight"), PrognosisText.straight(limb.straight(), limb.isLedAway()));
        facts.with(
                Texts.text("prognosis.label.bony-straight"),
                PrognosisText.straight(limb.bonyStraight(), limb.isBonyLedAway()));
        limb.ifFemurOut().ifPresent(out -> stays(facts, "prognosis.label.femur-out", out, days.today()));
        limb.ifTibiaOut().ifPresent(out -> stays(facts, "prognosis.label.tibia-out", out, days.today()));
        getContent()
                .add(
                        new H3(Texts.text("prognosis.limb.both")),
                        table("prognosis.caption.hka", limb, days, limb::hka),
                        table("prognosis.caption.bony", limb, days, limb::bonyHka),
                        facts);
    }

    private static void stays(FactList facts, String label, LimbOutlook out, LocalDate today) {
        facts.with(Texts.text(label), out.isHeld() ? goesOn(out) : staysAsItIs(out, today));
    }

    private static String goesOn(LimbOutlook out) {
        return Texts.text(
                "prognosis.stays",
                PrognosisText.straight(out.bonyStraight(), out.isBonyLedAway()),
                QuantityText.ofDeviation(out.bonyHka(out.ends()).middle()));
    }

    private static String staysAsItIs(LimbOutlook out, LocalDate today) {
        var hka = out.hka(today);
        return Texts.text(
                "prognosis.stays.alone",
                QuantityText.ofDeviation(hka.middle()),
                PrognosisText.mostDeviation(hka),
                QuantityText.ofDeviation(out.bonyHka(today).middle()));
    }

    private static AngleTable table(
            String caption, LimbOutlook limb, ShownDays days, Function<LocalDate, AngleSpread> angle) {
        List<AngleTable.Line> lines = days.until(limb.ends()).stream()
                .map(day -> line(day, angle.apply(day)))
                .toList();
        return new AngleTable(Texts.text(caption, Texts.of(limb.side())), lines);
    }

    private static AngleTable.Line line(LocalDate day, AngleSpread spread) {
        return new AngleTable.Line(
                day,
                QuantityText.ofDeviation(spread.middle()),
                PrognosisText.halfDeviation(spread),
                PrognosisText.mostDeviation(spread));
    }
}
