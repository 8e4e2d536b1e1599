package org.espalier.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.espalier.kit.DateText;
import org.espalier.kit.QuantityText;
import org.espalier.kit.Texts;
import org.espalier.science.alignment.Quantity;
import org.espalier.science.planning.CutKind;
import org.espalier.science.planning.Wedge;
import org.espalier.science.quantity.Angle;

/** What is said of a cut. */
final class CutWords {

    private static final List<Quantity> SHOWN = List.of(
            Quantity.HKA, Quantity.BONY_HKA, Quantity.MLDFA, Quantity.MMPTA, Quantity.LDTA, Quantity.MAD, Quantity.WBL);

    private static final double STEEPEST_WEDGE = 60;

    private CutWords() {}

    static List<CutAnswer.Number> numbers(FilmCut cut) {
        var before = cut.numbersBefore();
        var after = cut.numbersAfter();
        return SHOWN.stream()
                .filter(quantity -> quantity.unit() != Quantity.Unit.MILLIMETRES
                        || cut.limb().inMillimetres())
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
            case HKA, BONY_HKA -> QuantityText.ofDeviation(Angle.ofDegrees(value.getAsDouble()));
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
        notes.addAll(BendWords.of(cut));
        double turned = Math.abs(cut.outwards().degrees());
        if (turned > 0 && turned <= STEEPEST_WEDGE) {
            notes.addAll(cut.kind() == CutKind.ROUND ? round(cut) : wedge(cut));
        }
        if (!cut.limb().inMillimetres()) {
            notes.add(Texts.text("plan.cut.no-scale"));
        }
        return notes;
    }

    static String turn(Angle outwards) {
        return Texts.text(
                outwards.degrees() >= 0 ? "plan.cut.outwards" : "plan.cut.inwards", Math.abs(outwards.degrees()));
    }

    private static List<String> round(FilmCut cut) {
        return cut.dome().stream()
                .map(dome -> DomeWords.of(dome, cut.outwards()))
                .toList();
    }

    private static List<String> wedge(FilmCut cut) {
        var angle = cut.outwards().abs();
        return cut.width().stream()
                .flatMap(width -> Stream.of(
                        Texts.text(
                                "plan.cut.wedge",
                                width.millimetres(),
                                Wedge.CHORD.base(width, angle).millimetres(),
                                Wedge.RIGHT_TRIANGLE.base(width, angle).millimetres()),
                        Texts.text(
                                "plan.cut.length",
                                Wedge.changeAtMiddle(width, angle).millimetres())))
                .toList();
    }

    /** The cut in one sentence, for a sheet. */
    static String sentence(FilmCut cut, LocalDate takenOn) {
        return Texts.text(
                "plan.cut.turned",
                DateText.of(takenOn),
                turn(cut.outwards()),
                Texts.text("plan.CutKind." + cut.kind().name()),
                Texts.text("plan.Bone." + cut.bone().name()));
    }
}
