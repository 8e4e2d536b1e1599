package org.espalier.film.internal.dicom;

import java.util.Optional;

/** Value representations (PS3.5 section 6.2). */
public enum Vr {
    AE(Kind.TEXT),
    AS(Kind.TEXT),
    AT(Kind.TAG),
    CS(Kind.TEXT),
    DA(Kind.TEXT),
    DS(Kind.TEXT),
    DT(Kind.TEXT),
    FD(Kind.NUMBER),
    FL(Kind.NUMBER),
    IS(Kind.TEXT),
    LO(Kind.TEXT),
    LT(Kind.PROSE),
    OB(Kind.BYTES),
    OD(Kind.BYTES),
    OF(Kind.BYTES),
    OL(Kind.BYTES),
    OV(Kind.BYTES),
    OW(Kind.BYTES),
    PN(Kind.TEXT),
    SH(Kind.TEXT),
    SL(Kind.NUMBER),
    SQ(Kind.SEQUENCE),
    SS(Kind.NUMBER),
    ST(Kind.PROSE),
    SV(Kind.NUMBER),
    TM(Kind.TEXT),
    UC(Kind.TEXT),
    UI(Kind.TEXT),
    UL(Kind.NUMBER),
    UN(Kind.BYTES),
    UR(Kind.PROSE),
    US(Kind.NUMBER),
    UT(Kind.PROSE),
    UV(Kind.NUMBER);

    /** What the bytes of a value are. */
    public enum Kind {
        /** Text, several values parted by backslashes. */
        TEXT,
        /** Text in which a backslash is a letter like any other. */
        PROSE,
        /** Binary numbers. */
        NUMBER,
        /** Tags of other elements. */
        TAG,
        /** Bytes that this representation leaves uninterpreted. */
        BYTES,
        /** Nested data sets. */
        SEQUENCE
    }

    private final Kind kind;

    Vr(Kind kind) {
        this.kind = kind;
    }

    public Kind kind() {
        return kind;
    }

    /** Whether the explicit form has two reserved bytes and a length of 32 bits (PS3.5 section 7.1.2). */
    boolean hasLongLength() {
        return switch (this) {
            case OB, OD, OF, OL, OV, OW, SQ, SV, UC, UN, UR, UT, UV -> true;
            default -> false;
        };
    }

    /** Whether text follows the Specific Character Set (PS3.5 section 6.1.2.3). */
    boolean followsCharacterSet() {
        return switch (this) {
            case LO, LT, PN, SH, ST, UC, UT -> true;
            default -> false;
        };
    }

    static Optional<Vr> of(int first, int second) {
        for (Vr vr : VALUES) {
            if (vr.name().charAt(0) == first && vr.name().charAt(1) == second) {
                return Optional.of(vr);
            }
        }
        return Optional.empty();
    }

    private static final Vr[] VALUES = values();
}
