package org.espalier.treatment;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.espalier.kit.DateText;
import org.espalier.kit.QuantityText;
import org.espalier.kit.Texts;
import org.espalier.science.quantity.Side;
import org.jspecify.annotations.Nullable;

/** Treatment in the reader's words; the side always in full. */
public final class TreatmentText {

    private TreatmentText() {}

    /** {@code Right distal femur}. */
    public static String of(PhysisKey physis) {
        return Texts.text("treatment.physis.of", Texts.of(physis.side()), withoutSide(physis));
    }

    /** {@code distal femur}. */
    public static String withoutSide(PhysisKey physis) {
        return Texts.text("treatment.physis." + physis.bone() + "." + physis.end());
    }

    /** Where something is done: the physis, else the limb; with the side of the bone where there is one. */
    public static String place(Side side, Optional<PhysisKey> physis, @Nullable PlateSide plateSide) {
        var where = physis.map(TreatmentText::of).orElseGet(() -> Texts.text("treatment.limb", Texts.of(side)));
        return plateSide == null ? where : Texts.text("treatment.place", where, of(plateSide));
    }

    /** {@code medial}, within a sentence. */
    public static String of(PlateSide side) {
        return Texts.text("treatment.plate-side." + side.name());
    }

    /** {@code Plate placed – Right distal femur, medial side}. */
    public static String of(Act act) {
        return Texts.text("treatment.act", Texts.of(act.kind()), place(act.side(), act.physis(), act.plateSide()));
    }

    /** {@code Plate placed – Right distal femur, medial side}. */
    public static String of(Plan plan) {
        return Texts.text("treatment.act", Texts.of(plan.kind()), place(plan.side(), plan.physis(), plan.plateSide()));
    }

    /** {@code Right distal femur, lateral side: plate, 2 screws}. */
    public static String of(Tether tether) {
        return Texts.text(
                "treatment.tether",
                place(
                        tether.physis().side(),
                        Optional.of(tether.physis()),
                        tether.side().orElse(null)),
                tether.what());
    }

    /** When a plan was decided, asked for, and is to be done. */
    public static String when(Plan plan) {
        var parts = new ArrayList<String>();
        parts.add(Texts.text("treatment.plan.decided", DateText.of(plan.on())));
        if (plan.askedOn() != null) {
            parts.add(Texts.text("treatment.plan.asked", DateText.of(plan.askedOn())));
        }
        if (plan.theatreOn() != null) {
            parts.add(Texts.text("treatment.plan.theatre", DateText.of(plan.theatreOn())));
        }
        return String.join(" · ", parts);
    }

    /** Why a physis stands as it does, as a sentence. */
    public static String of(Why why) {
        return Texts.text(
                "treatment.Reason." + why.reason(),
                why.on().map(DateText::of).orElse(""),
                why.side().map(TreatmentText::small).orElse(""),
                why.reader().orElse(""));
    }

    /** Why something is not taken down, and what to do. */
    public static String of(Stop stop) {
        return Texts.text(
                "treatment.Reason." + stop.reason(),
                stop.wanted().map(TreatmentText::small).orElse(""),
                stop.deformity().map(one -> small(one.deformity())).orElse(""),
                stop.deformity().map(one -> DateText.of(one.filmOn())).orElse(""));
    }

    /**
     * {@code mLDFA Right 87.0°} for a physis, a deviation in words for a limb; and that it is the default when it is.
     */
    public static String target(PhysisStanding physis) {
        var key = physis.physis();
        var angle = Texts.text(
                "treatment.joint." + key.bone() + "." + key.end(), QuantityText.of(key.side(), physis.targetAngle()));
        return physis.target()
                .map(target -> Texts.text("treatment.target.signed", angle, DateText.of(target.on()), target.because()))
                .orElseGet(() -> Texts.text("treatment.target.default", angle));
    }

    /** What a limb is guided to. */
    public static String target(LimbStanding limb) {
        return limb.target()
                .map(target -> Texts.text(
                        "treatment.target.signed",
                        QuantityText.ofDeviation(limb.side(), target.angle()),
                        DateText.of(target.on()),
                        target.because()))
                .orElseGet(() -> Texts.text("treatment.target.straight"));
    }

    /** What of an implant was seen last, part by part. */
    public static String seen(Tether tether) {
        return tether.lastSeen().values().stream()
                .map(seen -> Texts.text(
                        "treatment.seen",
                        Texts.of(seen.part()),
                        small(seen.seen()),
                        DateText.of(seen.on()),
                        told(seen)))
                .reduce((one, next) -> one + "; " + next)
                .orElseGet(() -> Texts.text("treatment.seen.nothing"));
    }

    /** {@code metaphyseal screw bent, exposed on the film of 3-Nov-2026, read by A. Reader}. */
    public static String of(ScrewSighting seen) {
        var signs = seen.signs().isEmpty()
                ? Texts.text(seen.complete() ? "treatment.sighting.sound" : "treatment.sighting.not-all")
                : seen.signs().stream().sorted().map(TreatmentText::small).collect(Collectors.joining(", "));
        return Texts.text("treatment.sighting", small(seen.screw()), signs, DateText.of(seen.filmOn()), seen.reader());
    }

    /** What a piece is, where it holds when it is a screw, and of which lot. */
    public static String of(Piece piece) {
        return piece.role() == Piece.Role.BODY
                ? Texts.text("treatment.piece.body", piece.what(), lots(piece))
                : Texts.text("treatment.piece.line", piece.what(), Texts.of(piece.role()), lots(piece));
    }

    /** Pieces in words, like ones together. */
    public static List<String> of(List<Piece> pieces) {
        return pieces.stream()
                .collect(Collectors.groupingBy(TreatmentText::of, LinkedHashMap::new, Collectors.counting()))
                .entrySet()
                .stream()
                .map(some -> some.getValue() == 1
                        ? some.getKey()
                        : Texts.text("treatment.piece.times", some.getValue(), some.getKey()))
                .toList();
    }

    /** {@code lot A}, or that it is one of several, or not known. */
    public static String lots(Piece piece) {
        var numbers = piece.lotNumbers();
        return numbers == null
                ? Texts.text("treatment.lot.unknown")
                : Texts.text(piece.isOfOneLot() ? "treatment.lot" : "treatment.lot.one-of", numbers);
    }

    private static String told(ImplantFinding seen) {
        if (seen.seen() != ImplantFinding.Seen.FRAGMENT_RETAINED) {
            return "";
        }
        return seen.toldOn() == null
                ? Texts.text("treatment.seen.not-told")
                : Texts.text("treatment.seen.told", DateText.of(seen.toldOn()));
    }

    private static String small(Enum<?> constant) {
        return Texts.of(constant).toLowerCase(Locale.ROOT);
    }
}
