package org.espalier.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.espalier.kit.Texts;
import org.espalier.prognosis.Ahead;
import org.espalier.science.planning.BoneDeformity;
import org.espalier.science.planning.SingleCut;
import org.espalier.science.planning.TrueFragment;
import org.espalier.science.planning.TruePlane;
import org.espalier.science.planning.Wedge;
import org.espalier.science.quantity.Angle;
import org.espalier.science.quantity.Length;
import org.espalier.science.quantity.Side;

/** The cut: the true plane, each wedge by its formula, and a single oblique cut, from angles that were typed. */
final class OsteotomySheet {

    static final double MOST_BEND = 60;
    static final double MOST_TORSION = 90;
    static final double MOST_WIDTH = 120;
    private static final int CAUTIONS = 7;

    private final Ahead ahead;
    private final Side side;
    private final SheetInputs inputs;
    private final Optional<FilmCut> film;

    OsteotomySheet(Ahead ahead, Side side, SheetInputs inputs, Optional<FilmCut> film) {
        this.ahead = ahead;
        this.side = side;
        this.inputs = inputs;
        this.film = film;
    }

    Sheet sheet() {
        var parts = new ArrayList<Sheet.Part>();
        parts.add(asked());
        film.ifPresent(cut -> parts.addAll(ofFilm(cut)));
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
                inputs.number("below", 0, 300)
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
        parts.add(plane(deformity));
        width().ifPresent(width -> parts.add(wedges(width, deformity.varus().abs())));
        fragment()
                .ifPresentOrElse(
                        fragment -> parts.addAll(new ObliqueCutPart(
                                        SingleCut.plan(deformity, fragment),
                                        diameter(),
                                        inputs.number("below", 0, 300),
                                        side)
                                .parts()),
                        () -> parts.add(new Sheet.Note(Texts.text("plan.cut.fragment.why"))));
        return parts;
    }

    private Optional<Length> width() {
        return inputs.number("width", 1, MOST_WIDTH).map(Length::new);
    }

    private Optional<Length> diameter() {
        return inputs.number("diameter", 1, MOST_WIDTH).map(Length::new);
    }

    private static Sheet.Part plane(BoneDeformity deformity) {
        var exact = deformity.truePlane();
        var drawn = TruePlane.byRectangle(deformity.varus(), deformity.procurvatum());
        return new Sheet.Gathered()
                .with("plan.cut.frontal", PlanText.deviation(deformity.varus().degrees()))
                .with(
                        "plan.cut.sagittal",
                        directed(deformity.procurvatum(), "plan.cut.procurvatum", "plan.cut.recurvatum"))
                .with(
                        "plan.cut.torsion",
                        directed(deformity.internalTorsion(), "plan.cut.internal", "plan.cut.external"))
                .with(
                        "plan.cut.plane",
                        Texts.text(
                                "plan.cut.plane.of",
                                exact.angulation().degrees(),
                                exact.fromFrontal().degrees()))
                .with(
                        "plan.cut.plane.drawn",
                        Texts.text(
                                "plan.cut.plane.of",
                                drawn.angulation().degrees(),
                                drawn.fromFrontal().degrees()))
                .under("plan.cut.plane.heading");
    }

    static String directed(Angle angle, String above, String below) {
        return angle.degrees() == 0
                ? PlanText.angle(angle)
                : Texts.text(angle.degrees() > 0 ? above : below, Math.abs(angle.degrees()));
    }

    private static Sheet.Part wedges(Length width, Angle angle) {
        var rows = Arrays.stream(Wedge.values())
                .map(wedge -> List.of(
                        Texts.text("plan.wedge." + wedge.name()),
                        Texts.text("plan.wedge.formula." + wedge.name()),
                        PlanText.tenths(wedge.base(width, angle))))
                .toList();
        var all = new ArrayList<>(rows);
        all.add(List.of(
                Texts.text("plan.wedge.dome"), Texts.text("plan.wedge.formula.dome"), Texts.text("plan.wedge.none")));
        all.add(List.of(
                Texts.text("plan.wedge.length"),
                Texts.text("plan.wedge.formula.length"),
                Texts.text(
                        "plan.wedge.plus-minus",
                        Wedge.changeAtMiddle(width, angle).millimetres())));
        all.add(List.of(
                Texts.text("plan.wedge.rule"),
                Texts.text("plan.wedge.formula.rule"),
                Texts.text("plan.wedge.refused")));
        return new Sheet.Table(
                Texts.text("plan.wedge.heading", angle.degrees(), width.millimetres()),
                List.of(Texts.text("plan.wedge.kind"), Texts.text("plan.wedge.formula"), Texts.text("plan.wedge.base")),
                all);
    }

    /** The numbers of a film that was cut on the screen, as a part of a sheet. */
    private static List<Sheet.Part> ofFilm(FilmCut cut) {
        var numbers = new Sheet.Table(
                CutWords.sentence(cut).orElseGet(() -> Texts.text("plan.cut.not-turned")),
                List.of(Texts.text("plan.cut.number"), Texts.text("plan.cut.before"), Texts.text("plan.cut.after")),
                CutWords.numbers(cut).stream()
                        .map(number -> List.of(number.label(), number.before(), number.after()))
                        .toList());
        var parts = new ArrayList<Sheet.Part>();
        parts.add(numbers);
        parts.add(new Sheet.Drawing(
                Texts.text("plan.cut.axes"),
                Texts.text("plan.cut.axes.words"),
                page -> AxesDrawing.draw(CutDrawing.answer(cut, 0), page)));
        CutWords.notes(cut).forEach(note -> parts.add(new Sheet.Note(note)));
        return parts;
    }
}
