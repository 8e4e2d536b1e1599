package org.espalier.reading;

import java.util.Optional;
import org.espalier.kit.Texts;
import org.espalier.science.alignment.ChangeLimit;
import org.espalier.science.alignment.Quantity;
import org.espalier.science.quantity.Angle;

/** A change in words, with its direction. */
public final class ChangeText {

    private ChangeText() {}

    /** The difference with its direction: {@code 7.0° towards valgus}, {@code 12.4 mm longer}. */
    public static String difference(Change change) {
        var size = NumberText.brief(change.quantity(), Math.abs(change.difference()));
        if (size.equals(NumberText.brief(change.quantity(), 0))) {
            return size;
        }
        return Texts.text("reading.change.directed", size, Texts.text(direction(change)));
    }

    /** The limit the change was held against, by its parts; empty where none is established. */
    public static Optional<String> limit(Change change) {
        return change.judged().map(ChangeText::limit);
    }

    private static String limit(Change.Judged judged) {
        ChangeLimit limit = judged.limit();
        return Texts.text(
                judged.flexionRecorded() ? "reading.change.limit" : "reading.change.limit.straight",
                degrees(limit.limit()),
                degrees(limit.reader()),
                degrees(limit.positioning()));
    }

    private static String direction(Change change) {
        boolean up = change.difference() > 0;
        return switch (change.quantity()) {
            case MLDFA, ALDFA, LDTA, LPFA, HKA, BONY_HKA, MDA, MDA_CORTEX, FMDA, FEMUR_PHYSIS_ANGLE ->
                up ? "reading.change.varus" : "reading.change.valgus";
            case MMPTA, TIBIA_PHYSIS_ANGLE, ATFA -> up ? "reading.change.valgus" : "reading.change.varus";
            case MAD, WBL, KNEE_OFFSET, PATELLA_POSITION, FIBULA_POSITION ->
                up ? "reading.change.lateral" : "reading.change.medial";
            default ->
                change.quantity().unit() == Quantity.Unit.MILLIMETRES
                        ? up ? "reading.change.longer" : "reading.change.shorter"
                        : up ? "reading.change.more" : "reading.change.less";
        };
    }

    private static String degrees(Angle angle) {
        return String.valueOf(angle.degrees());
    }
}
