package org.espalier.treatment;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.espalier.patient.Bone;
import org.espalier.patient.BoneEnd;
import org.espalier.patient.FactId;
import org.espalier.science.quantity.Side;
import org.espalier.stock.Explant;
import org.jspecify.annotations.Nullable;

/**
 * One thing that was done, on one physis or limb.
 *
 * @param bone null when the whole limb is meant; its end likewise
 * @param plateSide the side of the bone; of a plate that was moved, where it is now
 * @param implant what was put in by this, or what this was done to
 * @param implants what went in or came out, in words; that nothing did is said too
 * @param count how many pieces
 * @param answers what was said beside; a question without an answer was not recorded
 * @param plan the plan that is done with this
 * @param reversal the deliberate reversal it rests on
 * @param pieces what went in or was used up, piece by piece; none when nothing was scanned or chosen
 * @param fate where went what came out; null when that was not recorded
 */
public record Act(
        ProcedureKind kind,
        Side side,
        @Nullable Bone bone,
        @Nullable BoneEnd end,
        @Nullable PlateSide plateSide,
        @Nullable ImplantId implant,
        String implants,
        int count,
        Map<Question, String> answers,
        @Nullable FactId plan,
        @Nullable UUID reversal,
        List<Piece> pieces,
        Explant.@Nullable Fate fate) {

    /** The longest description of implants that is kept. */
    public static final int IMPLANTS_LENGTH = 200;

    private static final int MOST_PIECES = 40;

    public Act {
        if ((bone == null) != (end == null)) {
            throw new IllegalArgumentException("A physis has a bone and an end: " + bone + ", " + end);
        }
        if (kind.needsPhysis() && bone == null) {
            throw new IllegalArgumentException(kind + " is done to a physis");
        }
        if (kind.needsPlateSide() && plateSide == null) {
            throw new IllegalArgumentException(kind + " is done on a side of the bone");
        }
        boolean onSomething = kind.isOnImplant() || kind.effect() == ProcedureKind.Effect.PUTS_IN;
        if (onSomething && implant == null) {
            throw new IllegalArgumentException(kind + " names what it puts in or is done to");
        }
        if (count < 0 || count > MOST_PIECES) {
            throw new IllegalArgumentException("Not a number of pieces: " + count);
        }
        implants = Written.required(implants, IMPLANTS_LENGTH);
        answers = Question.tidy(answers);
        pieces = List.copyOf(pieces);
        if (pieces.size() > MOST_PIECES) {
            throw new IllegalArgumentException("Not a number of pieces: " + pieces.size());
        }
    }

    /** An act of whose pieces nothing more is known than what is said in words. */
    public Act(
            ProcedureKind kind,
            Side side,
            @Nullable Bone bone,
            @Nullable BoneEnd end,
            @Nullable PlateSide plateSide,
            @Nullable ImplantId implant,
            String implants,
            int count,
            Map<Question, String> answers,
            @Nullable FactId plan,
            @Nullable UUID reversal) {
        this(kind, side, bone, end, plateSide, implant, implants, count, answers, plan, reversal, List.of(), null);
    }

    /** An act on one physis with nothing said beside the six facts. */
    public static Act of(
            ProcedureKind kind,
            PhysisKey physis,
            @Nullable PlateSide plateSide,
            @Nullable ImplantId implant,
            String implants,
            int count) {
        return new Act(
                kind,
                physis.side(),
                physis.bone(),
                physis.end(),
                plateSide,
                implant,
                implants,
                count,
                Map.of(),
                null,
                null);
    }

    /** An act on a limb. */
    public static Act ofLimb(ProcedureKind kind, Side side, String implants, int count) {
        return new Act(kind, side, null, null, null, null, implants, count, Map.of(), null, null);
    }

    /** The physis it is about; empty when the whole limb is meant. */
    public Optional<PhysisKey> physis() {
        return bone == null || end == null ? Optional.empty() : Optional.of(new PhysisKey(side, bone, end));
    }

    Act restingOn(@Nullable FactId donePlan, @Nullable UUID agreedReversal) {
        return new Act(
                kind,
                side,
                bone,
                end,
                plateSide,
                implant,
                implants,
                count,
                answers,
                donePlan,
                agreedReversal,
                pieces,
                fate);
    }

    public Act withPieces(List<Piece> others) {
        return new Act(
                kind, side, bone, end, plateSide, implant, implants, count, answers, plan, reversal, others, fate);
    }

    public Act withFate(Explant.Fate other) {
        return new Act(
                kind, side, bone, end, plateSide, implant, implants, count, answers, plan, reversal, pieces, other);
    }
}
