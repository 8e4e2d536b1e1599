package org.espalier.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.espalier.kit.DateText;
import org.espalier.kit.Texts;
import org.espalier.prognosis.FilmAngle;
import org.espalier.science.alignment.FemoralTibialRatio;
import org.espalier.science.alignment.MetaphysealAngleGroups;
import org.espalier.science.alignment.Quantity;
import org.espalier.science.alignment.TibialShare;
import org.espalier.science.quantity.Angle;

/** The indices of the proximal tibia of this limb, each with the cut-off of its own study. */
record TibialIndices(LimbMeasures measures) {

    Sheet.Part part() {
        var rows = new ArrayList<List<String>>();
        measures.latest(Quantity.MDA).ifPresent(film -> rows.add(mda(film, "plan.bow.mda")));
        measures.latest(Quantity.MDA_CORTEX).ifPresent(film -> rows.add(mda(film, "plan.bow.mda-cortex")));
        measures.latest(Quantity.EMA)
                .ifPresent(film -> rows.add(row("plan.bow.ema", film, Texts.text("plan.bow.ema.cut"))));
        share(TibialShare.Zero.values()[0], "plan.bow.share.square").ifPresent(rows::add);
        share(TibialShare.Zero.values()[1], "plan.bow.share.adult").ifPresent(rows::add);
        ratio().ifPresent(rows::add);
        if (rows.isEmpty()) {
            rows.add(List.of(Texts.text("plan.bow.indices.none"), "", ""));
        }
        return new Sheet.Table(
                Texts.text("plan.bow.indices"),
                List.of(Texts.text("plan.bow.index"), Texts.text("plan.bow.this-limb"), Texts.text("plan.bow.cut-off")),
                rows);
    }

    private static List<String> mda(FilmAngle film, String name) {
        var zone = Texts.text(
                "plan.bow.zone." + MetaphysealAngleGroups.zone(film.value()).name());
        return row(name, film, Texts.text("plan.bow.mda.cut", zone));
    }

    private static List<String> row(String name, FilmAngle film, String cut) {
        return List.of(Texts.text(name), Texts.text("plan.bow.on-day", film.value(), DateText.of(film.on())), cut);
    }

    private Optional<List<String>> share(TibialShare.Zero zero, String name) {
        return measures.latest(Quantity.MLDFA)
                .flatMap(femur -> measures.latest(Quantity.MMPTA)
                        .map(tibia -> TibialShare.percent(new Angle(femur.value()), new Angle(tibia.value()), zero)))
                .filter(OptionalDouble::isPresent)
                .map(share -> List.of(
                        Texts.text(name),
                        Texts.text("plan.bow.percent", share.getAsDouble()),
                        Texts.text("plan.bow.share.cut")));
    }

    private Optional<List<String>> ratio() {
        return measures.latest(Quantity.FMDA)
                .flatMap(femur -> measures.latest(Quantity.MDA)
                        .map(tibia -> FemoralTibialRatio.of(new Angle(femur.value()), new Angle(tibia.value()))))
                .filter(OptionalDouble::isPresent)
                .map(ratio -> List.of(
                        Texts.text("plan.bow.ratio"),
                        Texts.text("plan.bow.ratio.value", ratio.getAsDouble()),
                        Texts.text("plan.bow.ratio.cut")));
    }
}
