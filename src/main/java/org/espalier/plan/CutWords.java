package org.espalier.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.espalier.kit.Texts;
import org.espalier.science.alignment.Quantity;
import org.espalier.science.planning.BoneLine;
import org.espalier.science.planning.HingeCorrection;
import org.espalier.science.planning.Wedge;
import org.espalier.science.quantity.Angle;
import org.espalier.science.quantity.Length;

/** What is said of a cut. */
final class CutWords {

    private static final List<Quantity> SHOWN = List.of(
            Quantity.HKA, Quantity.BONY_HKA, Quantity.MLDFA, Quantity.MMPTA, Quantity.LDTA, Quantity.MAD, Quantity.WBL);

    /** Standard error of an axis across its length, judged from readers' errors. */
    private static final double LINE_ERROR = 1.5;

    private static final double STEEPEST_WEDGE = 60;

    private CutWords() {}

    static List<CutAnswer.Number> numbers(FilmCut cut) {
        var before = cut.numbersBefore();
        var after = cut.numbersAfter();
        return SHOWN.stream()
                .filter(quantity -> quantity.unit() != Quantity.Unit.MILLIMETRES || cut.inMillimetres())
                .filter(quantity -> before.value(quantity).isPresent())
                .map(quantity -> new CutAnswer.Number(
                        Texts.text("plan.cut." + quantity.name()),
                        text(quantity, before.value(quantity)),
                        text(quantity, after.value(quantity))))
                .toList();
    }

    private static String text(Quantity quantity, OptionalDouble value) {
        if (value.isEmpty()) {
            return Texts.text("plan.cut.none");
        }
        return switch (quantity) {
            case HKA, BONY_HKA -> PlanText.deviation(value.getAsDouble());
            case MAD -> offset(value.getAsDouble());
            case WBL -> Texts.text("plan.cut.percent", value.getAsDouble());
            default -> Texts.text("plan.angle", value.getAsDouble());
        };
    }

    private static String offset(double millimetres) {
        return Math.abs(millimetres) < 0.5
                ? Texts.text("kit.centre")
                : Texts.text(
                        "plan.cut.offset",
                        Math.abs(millimetres),
                        Texts.text(millimetres > 0 ? "kit.lateral" : "kit.medial"));
    }

    static List<String> notes(FilmCut cut) {
        var notes = new ArrayList<String>();
        cut.throughTheKnee()
                .map(angle -> Texts.text("plan.cut.through-knee", turn(angle)))
                .ifPresent(notes::add);
        notes.addAll(cut.tibia().map(CutWords::axes).orElseGet(() -> List.of(Texts.text("plan.cut.no-shaft"))));
        double turned = Math.abs(cut.outwards().degrees());
        cut.width()
                .filter(_ -> turned > 0 && turned <= STEEPEST_WEDGE)
                .ifPresent(width -> wedge(width, cut.outwards().abs()).forEach(notes::add));
        if (!cut.inMillimetres()) {
            notes.add(Texts.text("plan.cut.no-scale"));
        }
        return notes;
    }

    static String turn(Angle outwards) {
        return Texts.text(
                outwards.degrees() >= 0 ? "plan.cut.outwards" : "plan.cut.inwards", Math.abs(outwards.degrees()));
    }

    private static List<String> axes(HingeCorrection tibia) {
        var bend = tibia.angle().abs();
        if (bend.compareTo(BoneLine.LEAST_FOR_LEVEL) < 0) {
            return List.of(Texts.text("plan.cut.no-centre", bend.degrees()));
        }
        return List.of(
                Texts.text(
                        "plan.cut.centre",
                        PlanText.deviation(tibia.angle().degrees()),
                        BoneLine.levelError(LINE_ERROR, bend)),
                beside(tibia));
    }

    private static String beside(HingeCorrection tibia) {
        var beside = tibia.axesBesideEachOther();
        return Texts.text(
                "plan.cut.beside",
                Math.abs(beside.millimetres()),
                Texts.text(beside.millimetres() >= 0 ? "kit.lateral" : "kit.medial"));
    }

    private static Stream<String> wedge(Length width, Angle angle) {
        return Stream.of(
                Texts.text(
                        "plan.cut.wedge",
                        width.millimetres(),
                        Wedge.CHORD.base(width, angle).millimetres(),
                        Wedge.RIGHT_TRIANGLE.base(width, angle).millimetres()),
                Texts.text("plan.cut.length", Wedge.changeAtMiddle(width, angle).millimetres()));
    }

    /** The cut in one sentence, for a sheet. */
    static Optional<String> sentence(FilmCut cut) {
        return cut.outwards().degrees() == 0
                ? Optional.empty()
                : Optional.of(Texts.text("plan.cut.turned", turn(cut.outwards())));
    }
}
