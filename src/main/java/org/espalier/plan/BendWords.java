package org.espalier.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.espalier.kit.QuantityText;
import org.espalier.kit.Texts;
import org.espalier.patient.Bone;
import org.espalier.science.planning.BoneLine;
import org.espalier.science.planning.HingeCorrection;
import org.espalier.science.planning.LimbPoint;
import org.espalier.science.quantity.Length;

/**
 * What is said of the centre of a bend and of a hinge: angulation, translation, and which rule of cut and hinge
 * applies.
 */
final class BendWords {

    /** What counts as the same place, judged. */
    private static final Length SAME_PLACE = new Length(3);

    private BendWords() {}

    static List<String> of(FilmCut cut) {
        return cut.bend()
                .map(bend -> of(cut, bend))
                .orElseGet(() -> List.of(
                        Texts.text(cut.bone() == Bone.FEMUR ? "plan.cut.no-shaft.FEMUR" : "plan.cut.no-shaft.TIBIA")));
    }

    private static List<String> of(FilmCut cut, FilmBend bend) {
        var angle = bend.varus();
        return bend.centre()
                .map(centre -> told(cut, bend, centre))
                .orElseGet(() ->
                        List.of(Texts.text("plan.cut.no-centre." + bend.bone().name(), Math.abs(angle.degrees()))));
    }

    private static List<String> told(FilmCut cut, FilmBend bend, LimbPoint centre) {
        var words = new ArrayList<String>();
        var angle = QuantityText.ofDeviation(bend.varus());
        boolean inMillimetres = cut.limb().inMillimetres();
        words.add(Texts.text("plan.cut.centre." + bend.bone().name(), angle));
        words.add(Texts.text(
                "plan.cut.basis." + bend.basis().name(), bend.shaftAngle().degrees()));
        if (inMillimetres) {
            words.add(Texts.text("plan.cut.level-error", bend.levelError(centre).millimetres()));
            translation(cut, bend).ifPresent(words::add);
        }
        cut.correction().filter(_ -> inMillimetres).ifPresent(correction -> words.addAll(hinge(cut, correction)));
        return words;
    }

    /** How far the axes lie beside each other at the cut as the bone stands. */
    private static Optional<String> translation(FilmCut cut, FilmBend bend) {
        var line = new BoneLine(cut.limb().at(cut.from()), cut.limb().at(cut.to()));
        return bend.distal()
                .crossing(line)
                .map(place -> Texts.text(
                        "plan.cut.translation",
                        beside(new Length(bend.proximal().beside(place)))));
    }

    private static List<String> hinge(FilmCut cut, HingeCorrection correction) {
        var rule = correction.rule(cut.hingeToCut(), SAME_PLACE);
        return List.of(
                Texts.text("plan.cut.rule." + rule.name()),
                Texts.text("plan.cut.beside", beside(correction.axesBesideEachOther())));
    }

    private static String beside(Length length) {
        return Math.abs(length.millimetres()) < 0.05
                ? Texts.text("plan.cut.in-line")
                : Texts.text(
                        "plan.cut.offset",
                        Math.abs(length.millimetres()),
                        Texts.text(length.millimetres() > 0 ? "kit.lateral" : "kit.medial"));
    }
}
