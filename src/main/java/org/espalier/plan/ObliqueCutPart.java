package org.espalier.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.espalier.kit.QuantityText;
import org.espalier.kit.Texts;
import org.espalier.science.planning.BoneDeformity;
import org.espalier.science.planning.ObliqueCut;
import org.espalier.science.planning.SingleCut;
import org.espalier.science.quantity.Angle;
import org.espalier.science.quantity.Length;
import org.espalier.science.quantity.Side;

/**
 * A single oblique cut in words and as a drawing.
 *
 * @param diameter of the bone there
 * @param below millimetres below the tubercle
 */
record ObliqueCutPart(SingleCut plan, Optional<Length> diameter, Optional<Double> below, Side side) {

    private static final Angle FIVE = Angle.ofDegrees(5);

    List<Sheet.Part> parts() {
        return switch (plan) {
            case SingleCut.Refused(var reason) ->
                List.of(new Sheet.Note(Texts.text("plan.oblique.refused." + reason.name())));
            case SingleCut.Possible(var cut, var flagged) -> parts(cut, flagged);
        };
    }

    private List<Sheet.Part> parts(ObliqueCut cut, boolean flagged) {
        var parts = new ArrayList<Sheet.Part>();
        parts.add(facts(cut));
        if (flagged) {
            parts.add(new Sheet.Note(Texts.text("plan.oblique.long", SingleCut.STEEPEST.degrees())));
        }
        diameter.flatMap(width -> below.flatMap(level -> above(cut, width, level)))
                .ifPresent(parts::add);
        parts.add(errors(cut));
        diameter.ifPresent(width -> parts.add(new Sheet.Drawing(
                Texts.text("plan.oblique.drawing"),
                Texts.text(
                        "plan.oblique.drawing.words",
                        Texts.of(side),
                        ObliqueDrawing.ratio(cut, width, below),
                        line(cut.frontalLine(), "plan.oblique.falls-lateral", "plan.oblique.rises-lateral"),
                        line(cut.lateralLine(), "plan.oblique.rises-posterior", "plan.oblique.falls-posterior")),
                page -> ObliqueDrawing.draw(cut, width, below, side == Side.LEFT, page))));
        return parts;
    }

    private Sheet.Part facts(ObliqueCut cut) {
        var facts = new Sheet.Gathered()
                .with(
                        "plan.oblique.inclination",
                        Texts.text(
                                "plan.oblique.inclination.of",
                                cut.fromShaft().degrees(),
                                cut.fromTransverse().degrees()))
                .with(
                        "plan.oblique.front",
                        line(cut.frontalLine(), "plan.oblique.falls-lateral", "plan.oblique.rises-lateral"))
                .with(
                        "plan.oblique.side",
                        line(cut.lateralLine(), "plan.oblique.rises-posterior", "plan.oblique.falls-posterior"))
                .with(
                        "plan.oblique.climb",
                        Texts.text("plan.oblique." + cut.climb().name()))
                .with(
                        "plan.oblique.azimuth",
                        Texts.text("plan.angle", cut.azimuth().degrees()))
                .with(
                        "plan.oblique.rotation",
                        OsteotomySheet.directed(cut.rotation(), "plan.oblique.outwards", "plan.oblique.inwards"))
                .with("plan.oblique.contact", Texts.text("plan.oblique.contact.of", 100 * cut.contact()))
                .with("plan.oblique.length", Texts.text("plan.oblique.length.none"));
        diameter.ifPresent(width -> {
            double along = cut.lengthAlongBone(width).millimetres();
            facts.with("plan.oblique.along", Texts.text("plan.mm", along));
            below.ifPresent(level -> facts.with(
                    "plan.oblique.reach",
                    Texts.text("plan.oblique.reach.of", level, level - along / 2, level + along / 2)));
        });
        return facts.under("plan.oblique.heading");
    }

    /** Pointed out where the cut reaches up beside the tubercle, towards the growth plate. */
    private static Optional<Sheet.Part> above(ObliqueCut cut, Length width, double level) {
        double above = cut.lengthAlongBone(width).millimetres() / 2 - level;
        return above > 0 ? Optional.of(new Sheet.Note(Texts.text("plan.oblique.above", above))) : Optional.empty();
    }

    private static String line(Angle angle, String above, String below) {
        return OsteotomySheet.directed(angle, above, below);
    }

    private static Sheet.Part errors(ObliqueCut cut) {
        return new Sheet.Table(
                Texts.text("plan.oblique.errors"),
                List.of(
                        Texts.text("plan.oblique.error"),
                        Texts.text("plan.cut.frontal"),
                        Texts.text("plan.cut.sagittal"),
                        Texts.text("plan.cut.torsion")),
                List.of(
                        row("plan.oblique.error.none", cut.left()),
                        row("plan.oblique.error.steeper", cut.leftBy(FIVE, Angle.ZERO, Angle.ZERO)),
                        row("plan.oblique.error.azimuth", cut.leftBy(Angle.ZERO, FIVE, Angle.ZERO)),
                        row("plan.oblique.error.turn", cut.leftBy(Angle.ZERO, Angle.ZERO, FIVE))));
    }

    private static List<String> row(String key, BoneDeformity left) {
        return List.of(
                Texts.text(key),
                QuantityText.ofDeviation(left.varus()),
                OsteotomySheet.directed(rounded(left.procurvatum()), "plan.cut.procurvatum", "plan.cut.recurvatum"),
                OsteotomySheet.directed(rounded(left.internalTorsion()), "plan.cut.internal", "plan.cut.external"));
    }

    private static Angle rounded(Angle angle) {
        double tenths = Math.round(angle.degrees() * 10) / 10.0;
        return new Angle(tenths == 0 ? 0 : tenths);
    }
}
