package org.espalier.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.espalier.kit.QuantityText;
import org.espalier.kit.Texts;
import org.espalier.science.planning.BoneDeformity;
import org.espalier.science.planning.Dome;
import org.espalier.science.planning.Wedge;
import org.espalier.science.quantity.Angle;
import org.espalier.science.quantity.Length;
import org.espalier.science.quantity.Side;

/**
 * Wedges and a round cut, each formula under its name, as a table and as a drawing.
 *
 * @param width of the bone at the cut
 * @param radius of a round cut; empty when none was typed
 */
record WedgePart(BoneDeformity deformity, Length width, Optional<Length> radius, Side side) {

    private static final double STEEPEST = 60;
    private static final double LEAST_TURN = 0.05;

    List<Sheet.Part> parts() {
        var frontal = deformity.varus().abs();
        var parts = new ArrayList<Sheet.Part>();
        parts.add(table(angles()));
        if (angles().size() > 1) {
            parts.add(new Sheet.Note(Texts.text(
                    "plan.wedge.where", deformity.truePlane().fromFrontal().degrees())));
        }
        var dome = dome();
        if (radius.isPresent() && dome.isEmpty()) {
            parts.add(new Sheet.Note(Texts.text("plan.dome.short", width.millimetres() / 2)));
        }
        if (frontal.degrees() >= LEAST_TURN && frontal.degrees() <= STEEPEST) {
            parts.add(drawing(dome));
        }
        return parts;
    }

    /** From the front alone, and in the true plane where the bone is bent seen from the side too. */
    private List<Angle> angles() {
        var frontal = deformity.varus().abs();
        var whole = deformity.truePlane().angulation();
        return whole.degrees() - frontal.degrees() < LEAST_TURN || whole.degrees() > STEEPEST
                ? List.of(frontal)
                : List.of(frontal, whole);
    }

    private Optional<Dome> dome() {
        return radius.filter(one -> 2 * one.millimetres() >= width.millimetres())
                .map(one -> new Dome(one, width));
    }

    private Sheet.Part table(List<Angle> angles) {
        var rows = new ArrayList<List<String>>();
        Arrays.stream(Wedge.values())
                .map(wedge -> row(
                        Texts.text("plan.wedge." + wedge.name()),
                        Texts.text("plan.wedge.formula." + wedge.name()),
                        angles.stream().map(angle -> PlanText.tenths(wedge.base(width, angle)))))
                .forEach(rows::add);
        rows.add(row(
                Texts.text("plan.wedge.length"),
                Texts.text("plan.wedge.formula.length"),
                angles.stream()
                        .map(angle -> Texts.text(
                                "plan.wedge.plus-minus",
                                Wedge.changeAtMiddle(width, angle).millimetres()))));
        rows.add(row(
                Texts.text("plan.wedge.dome"),
                Texts.text("plan.wedge.formula.dome"),
                angles.stream().map(angle -> dome().map(dome -> Texts.text(
                                "plan.wedge.slide", dome.slide(angle).millimetres(), 100 * dome.contact(angle)))
                        .orElseGet(() -> Texts.text("plan.wedge.no-radius")))));
        rows.add(row(
                Texts.text("plan.wedge.dome.depth"),
                Texts.text("plan.wedge.formula.depth"),
                angles.stream().map(_ -> dome().map(dome -> PlanText.tenths(dome.depth()))
                        .orElseGet(() -> Texts.text("plan.wedge.no-radius")))));
        rows.add(row(
                Texts.text("plan.wedge.rule"),
                Texts.text("plan.wedge.formula.rule"),
                angles.stream().map(_ -> Texts.text("plan.wedge.refused"))));
        return new Sheet.Table(Texts.text("plan.wedge.heading", width.millimetres()), head(angles), rows);
    }

    private static List<String> head(List<Angle> angles) {
        var head = new ArrayList<String>();
        head.add(Texts.text("plan.wedge.kind"));
        head.add(Texts.text("plan.wedge.formula"));
        head.add(Texts.text("plan.wedge.base", angles.getFirst().degrees()));
        angles.stream()
                .skip(1)
                .map(angle -> Texts.text("plan.wedge.base.true", angle.degrees()))
                .forEach(head::add);
        return head;
    }

    private static List<String> row(String name, String formula, Stream<String> values) {
        var row = new ArrayList<String>(List.of(name, formula));
        values.forEach(row::add);
        return row;
    }

    private Sheet.Part drawing(Optional<Dome> dome) {
        return new Sheet.Drawing(
                Texts.text("plan.wedge.drawing"),
                Texts.text(
                        "plan.wedge.drawing.words",
                        Texts.of(side),
                        QuantityText.ofDeviation(deformity.varus()),
                        WedgeDrawing.ratio(width)),
                page -> WedgeDrawing.draw(width, deformity.varus(), dome, side == Side.LEFT, page));
    }
}
