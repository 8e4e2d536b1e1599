package org.espalier.interchange;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.espalier.patient.Bone;
import org.espalier.patient.BoneEnd;
import org.espalier.science.quantity.Side;
import org.jspecify.annotations.Nullable;

/** The limb or physis that a row is about; bone and end stay empty when the whole limb is meant. */
record PhysisCells(Side side, @Nullable Bone bone, @Nullable BoneEnd end) {

    private static final Map<String, Side> SIDES =
            Arrays.stream(Side.values()).collect(Collectors.toMap(Side::letter, side -> side));
    private static final Map<String, Bone> BONES = Words.all(Bone.class);
    private static final Map<String, BoneEnd> ENDS = Words.all(BoneEnd.class);

    static Optional<PhysisCells> read(ClinicRow row) {
        var side = side(row);
        var bone = optional(row, "bone", BONES);
        var end = optional(row, "end", ENDS);
        boolean half = row.cells().isEmpty("bone") != row.cells().isEmpty("end");
        if (half) {
            row.cells().refuse(row.cells().isEmpty("bone") ? "bone" : "end", FileReason.EMPTY);
        }
        return half ? Optional.empty() : side.map(one -> new PhysisCells(one, bone.orElse(null), end.orElse(null)));
    }

    static Optional<Side> side(ClinicRow row) {
        return row.cells().oneOf("side", SIDES);
    }

    /** What stands in a cell that may be empty. */
    static <T> Optional<T> optional(ClinicRow row, String column, Map<String, T> values) {
        return row.cells().isEmpty(column) ? Optional.empty() : row.cells().oneOf(column, values);
    }

    static Map<String, String> of(Side side, @Nullable Bone bone, @Nullable BoneEnd end) {
        Map<String, String> cells = new LinkedHashMap<>();
        cells.put("side", side.letter());
        cells.put("bone", Words.of(bone));
        cells.put("end", Words.of(end));
        return cells;
    }
}
