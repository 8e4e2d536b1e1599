package org.espalier.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.espalier.kit.DateText;
import org.espalier.kit.QuantityText;
import org.espalier.kit.Texts;
import org.espalier.patient.DiagnosisKind;
import org.espalier.prognosis.Ahead;
import org.espalier.science.alignment.NormalRange;
import org.espalier.science.alignment.Quantity;
import org.espalier.science.quantity.Angle;
import org.espalier.science.quantity.PrintedTable;

/** Valgus after a proximal tibial metaphyseal fracture: how it went in each series, beside this limb's films. */
record FractureValgus(Ahead ahead, LimbMeasures measures) {

    private static final List<PrintedTable.Row> SERIES =
            PrintedTable.of(FractureValgus.class, "fracture-valgus.csv").rows();

    List<Sheet.Part> parts() {
        var parts = new ArrayList<Sheet.Part>();
        parts.add(new Sheet.Table(
                Texts.text("plan.fracture.heading"),
                List.of(
                        Texts.text("plan.fracture.study"),
                        Texts.text("plan.fracture.n"),
                        Texts.text("plan.fracture.greatest"),
                        Texts.text("plan.fracture.last"),
                        Texts.text("plan.fracture.longer")),
                SERIES.stream().map(FractureValgus::row).toList()));
        parts.add(new Sheet.Note(Texts.text(isDiagnosed() ? "plan.fracture.here" : "plan.fracture.not-here")));
        if (isDiagnosed()) {
            parts.add(films());
        }
        return parts;
    }

    private static List<String> row(PrintedTable.Row row) {
        var checked = NormalRange.Checking.valueOf(row.text("checked").toUpperCase(Locale.ROOT));
        return List.of(
                Texts.text("plan.bow.cited", row.text("study"), Texts.text("plan.bow.checked." + checked)),
                row.text("n"),
                row.text("greatest"),
                row.text("last"),
                row.text("longer"));
    }

    /** The course of this limb, the newest first. */
    private Sheet.Part films() {
        return new Sheet.Table(
                Texts.text("plan.fracture.films"),
                List.of(
                        Texts.text("plan.growth.day"),
                        Texts.text("plan.length.hka"),
                        Texts.text("plan.fracture.mmpta")),
                ahead.films().of(measures.side(), Quantity.HKA).reversed().stream()
                        .map(film -> List.of(
                                DateText.of(film.on()),
                                QuantityText.ofDeviation(Angle.ofDegrees(film.value())),
                                ahead.films().of(measures.side(), Quantity.MMPTA).stream()
                                        .filter(one -> one.on().equals(film.on()))
                                        .findFirst()
                                        .map(one -> Texts.text("plan.angle", one.value()))
                                        .orElse("")))
                        .toList());
    }

    private boolean isDiagnosed() {
        return ahead.examination().diagnoses().findings().stream()
                .filter(one -> one.kind() == DiagnosisKind.VALGUS_AFTER_METAPHYSEAL_FRACTURE)
                .anyMatch(one -> one.sides().covers(measures.side()));
    }
}
