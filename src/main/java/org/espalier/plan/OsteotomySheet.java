package org.espalier.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.espalier.kit.Texts;
import org.espalier.prognosis.Ahead;
import org.espalier.science.planning.BoneDeformity;
import org.espalier.science.planning.SingleCut;
import org.espalier.science.planning.TrueFragment;
import org.espalier.science.quantity.Angle;
import org.espalier.science.quantity.Length;
import org.espalier.science.quantity.Side;

/** The cut: the true plane, each wedge by its formula, and a single oblique cut, from angles that were typed. */
final class OsteotomySheet {

    static final double MOST_BEND = 60;
    static final double MOST_TORSION = 90;
    static final double MOST_WIDTH = 120;
    static final double MOST_RADIUS = 200;
    static final double MOST_BELOW = 300;
    private static final int CAUTIONS = 7;

    private final Ahead ahead;
    private final Side side;
    private final SheetInputs inputs;
    private final Optional<FilmCutPart> film;
    private final PlanePart plane;

    OsteotomySheet(Ahead ahead, Side side, SheetInputs inputs, Optional<FilmCutPart> film) {
        this.ahead = ahead;
        this.side = side;
        this.inputs = inputs;
        this.film = film;
        plane = new PlanePart(ReadAngle.of(new LimbMeasures(ahead, side)));
    }

    Sheet sheet() {
        var parts = new ArrayList<Sheet.Part>();
        film.ifPresent(cut -> parts.addAll(cut.parts()));
        parts.add(asked());
        parts.addAll(plane.ofFilms());
        deformity()
                .ifPresentOrElse(
                        deformity -> parts.addAll(of(deformity)),
                        () -> parts.add(new Sheet.Note(Texts.text("plan.cut.ask"))));
        return new Sheet(
                SheetKind.OSTEOTOMY,
                ahead.prognosis().child().who(),
                ahead.today(),
                side,
                Texts.text("plan.osteotomy.title", Texts.of(side)),
                parts,
                IntStream.rangeClosed(1, CAUTIONS)
                        .mapToObj(i -> Texts.text("plan.osteotomy.caution." + i))
                        .toList());
    }

    /** Nothing stands in for an angle that was not typed: one that was not measured is no zero. */
    private Optional<BoneDeformity> deformity() {
        return inputs.number("varus", -MOST_BEND, MOST_BEND)
                .flatMap(varus -> inputs.number("procurvatum", -MOST_BEND, MOST_BEND)
                        .flatMap(procurvatum -> inputs.number("torsion", -MOST_TORSION, MOST_TORSION)
                                .map(torsion -> BoneDeformity.ofDegrees(varus, procurvatum, torsion))));
    }

    private Sheet.Part asked() {
        var facts = new Sheet.Gathered();
        facts.with(
                "plan.cut.fragment",
                fragment()
                        .map(one -> Texts.text("plan.input.fragment." + one.name()))
                        .orElseGet(() -> Texts.text("plan.cut.fragment.asked")));
        facts.with(
                "plan.cut.level",
                inputs.number("below", 0, MOST_BELOW)
                        .map(below -> Texts.text("plan.cut.level.mm", below))
                        .orElseGet(() -> Texts.text("plan.cut.not-said")));
        facts.with(
                "plan.cut.fibula",
                inputs.choice("fibula", FibulaPlan.class)
                        .map(Texts::of)
                        .orElseGet(() -> Texts.text("plan.cut.fibula.asked")));
        return facts.under("plan.cut.asked");
    }

    private Optional<TrueFragment> fragment() {
        return inputs.choice("fragment", TrueFragment.class);
    }

    private List<Sheet.Part> of(BoneDeformity deformity) {
        var parts = new ArrayList<Sheet.Part>();
        parts.add(plane.of(deformity));
        width().ifPresent(width -> parts.addAll(new WedgePart(deformity, width, radius(), side).parts()));
        fragment()
                .ifPresentOrElse(
                        fragment -> parts.addAll(new ObliqueCutPart(
                                        SingleCut.plan(deformity, fragment),
                                        diameter(),
                                        inputs.number("below", 0, MOST_BELOW),
                                        side)
                                .parts()),
                        () -> parts.add(new Sheet.Note(Texts.text("plan.cut.fragment.why"))));
        return parts;
    }

    private Optional<Length> width() {
        return inputs.number("width", 1, MOST_WIDTH).map(Length::new);
    }

    private Optional<Length> radius() {
        return inputs.number("radius", 1, MOST_RADIUS).map(Length::new);
    }

    private Optional<Length> diameter() {
        return inputs.number("diameter", 1, MOST_WIDTH).map(Length::new);
    }

    static String directed(Angle angle, String above, String below) {
        return angle.degrees() == 0
                ? PlanText.angle(angle)
                : Texts.text(angle.degrees() > 0 ? above : below, Math.abs(angle.degrees()));
    }
}
