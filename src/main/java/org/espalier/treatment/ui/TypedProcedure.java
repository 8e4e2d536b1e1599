package org.espalier.treatment.ui;

import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * What stands in the form of a procedure, right or wrong.
 *
 * @param id the procedure that will come of it
 */
record TypedProcedure(
        UUID id,
        String on,
        boolean elsewhere,
        String surgeon,
        String note,
        String nextOn,
        String nextWhy,
        String reason,
        @Nullable Integer theatreMinutes,
        @Nullable Integer anaesthesiaMinutes,
        List<TypedAct> acts) {

    /**
     * One act as typed.
     *
     * @param implant what it puts in or is done to
     * @param pieces null in what was typed before pieces were asked for
     */
    record TypedAct(
            @Nullable String kind,
            @Nullable String side,
            @Nullable String bone,
            @Nullable String end,
            @Nullable String plateSide,
            @Nullable UUID implant,
            String implants,
            @Nullable Integer count,
            Map<String, String> answers,
            @Nullable List<TypedPiece> pieces,
            @Nullable String fate) {

        List<TypedPiece> allPieces() {
            return pieces == null ? List.of() : pieces;
        }
    }
}
