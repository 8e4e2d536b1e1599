package org.espalier.science.growth;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.espalier.science.quantity.Age;
import org.espalier.science.quantity.PrintedTable;
import org.espalier.science.quantity.Sex;

/**
 * A single sign of the skeleton with the bone age at which it is usually seen.
 *
 * <p>Source: two tables of a textbook chapter, read in an excerpt ({@code bone-age-signs.csv}). Error: half a year by
 * the steps of the tables alone; whole hands beside an atlas say more. A sign tells its age only while it is the last
 * one seen.
 */
public enum BoneAgeSign {
    /** Two centres in the olecranon. */
    TWO_CENTRES,
    /** A half-moon. */
    HALF_MOON,
    /** A rectangle. */
    RECTANGLE,
    /** It begins to fuse. */
    FUSION_BEGINS,
    /** It has fused. */
    FUSED,
    /** The hook of the hamate is seen. */
    HOOK_OF_HAMATE,
    /** The sesamoid of the thumb is seen. */
    THUMB_SESAMOID,
    /** The distal radial epiphysis caps its metaphysis. */
    RADIUS_CAPPED,
    /** The physis of the thumb's distal phalanx has closed. */
    THUMB_TIP_CLOSED,
    /** That of the index finger's distal phalanx has closed. */
    INDEX_TIP_CLOSED,
    /** That of the index finger's proximal phalanx has closed. */
    INDEX_BASE_CLOSED,
    /** That of the index finger's metacarpal has closed. */
    INDEX_METACARPAL_CLOSED,
    /** That of the distal ulna has closed. */
    ULNA_CLOSED,
    /** That of the distal radius has closed. */
    RADIUS_CLOSED;

    /** Where signs are looked for. */
    public enum Part {
        /** The elbow. */
        OLECRANON,
        /** Hand and wrist. */
        HAND
    }

    private static final String NOT_PRINTED = "-";

    private final Part part;
    private final BySex<Optional<Age>> ages;

    BoneAgeSign() {
        PrintedTable.Row row = PrintedTable.of(BoneAgeSign.class, "bone-age-signs.csv").rows().stream()
                .filter(each -> each.text("sign").equals(name()))
                .findFirst()
                .orElseThrow();
        part = Part.valueOf(row.text("part"));
        ages = BySex.of(sex -> {
            var column = sex == Sex.FEMALE ? "girls" : "boys";
            return row.text(column).equals(NOT_PRINTED)
                    ? Optional.empty()
                    : Optional.of(Age.ofDecimalYears(row.number(column)));
        });
    }

    /** The signs of a part in the order in which they come. */
    public static List<BoneAgeSign> of(Part part) {
        return Stream.of(values()).filter(sign -> sign.part == part).toList();
    }

    /** The bone age at which it is usually seen; empty where none is printed for the sex. */
    public Optional<Age> age(Sex sex) {
        return ages.get(sex);
    }
}
