package org.espalier.treatment;

import java.time.LocalDate;
import org.espalier.science.quantity.Side;
import org.espalier.stock.Explant;
import org.jspecify.annotations.Nullable;

/**
 * A piece that came out of the child.
 *
 * @param physis null when the whole limb is meant
 * @param by the procedure that took it out
 * @param elsewhere whether another hospital took it out
 * @param fate where it went; null when that was not recorded
 */
public record PieceOut(
        ProcedureId by,
        @Nullable ImplantId implant,
        Side side,
        @Nullable PhysisKey physis,
        LocalDate on,
        Piece piece,
        boolean elsewhere,
        Explant.@Nullable Fate fate) {}
