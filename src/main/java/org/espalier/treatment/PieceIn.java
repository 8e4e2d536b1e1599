package org.espalier.treatment;

import java.time.LocalDate;
import org.espalier.science.quantity.Side;
import org.jspecify.annotations.Nullable;

/**
 * A piece that is in the child.
 *
 * @param implant of which implant it is; null for what holds a cut bone or belongs to no implant of a physis
 * @param by what put it in
 * @param physis null when the whole limb is meant
 * @param maybeOut whether it may have come out: one of several unlike pieces did, and it was not said which
 */
public record PieceIn(
        @Nullable ImplantId implant,
        ProcedureKind by,
        Side side,
        @Nullable PhysisKey physis,
        LocalDate on,
        Piece piece,
        boolean maybeOut) {

    PieceIn with(Piece other, boolean perhaps) {
        return new PieceIn(implant, by, side, physis, on, other, perhaps);
    }
}
