package org.espalier.reading;

import java.math.RoundingMode;
import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.util.Optional;
import org.espalier.kit.Texts;
import org.espalier.science.alignment.NormalRange;
import org.espalier.science.alignment.Quantity;
import org.espalier.science.alignment.ReaderError;

/** A value of a quantity as a clinician reads it, with unit and direction in words. Its side stands beside it. */
public final class NumberText {

    private NumberText() {}

    /** The value with its direction: {@code 7.2° varus}, {@code 40.7 % from the medial edge}, {@code 312.4 mm}. */
    public static String of(Quantity quantity, double value) {
        return switch (quantity) {
            case HKA, BONY_HKA, MDA, MDA_CORTEX, FMDA ->
                deviation(value, "reading.varus", "reading.valgus", "reading.straight");
            case ATFA -> deviation(value, "reading.valgus", "reading.varus", "reading.straight");
            case JLCA -> deviation(value, "reading.opens-lateral", "reading.opens-medial", "reading.parallel");
            case MLDFA, LDTA, LPFA, ALDFA, FEMUR_PHYSIS_ANGLE -> jointAngle(value, "reading.lateral");
            case MMPTA, TIBIA_PHYSIS_ANGLE -> jointAngle(value, "reading.medial");
            case MAD, KNEE_OFFSET ->
                Texts.text(
                        "reading.text.length.directed",
                        size(value),
                        direction(value, "reading.lateral", "reading.medial", "reading.centred"));
            case WBL, PATELLA_POSITION, FIBULA_POSITION -> share(value);
            default ->
                quantity.unit() == Quantity.Unit.MILLIMETRES
                        ? Texts.text("reading.text.length", size(value))
                        : Texts.text("reading.text.angle.alone", signed(value));
        };
    }

    /**
     * The value against what is normal: a joint angle inside the range is neutral, outside it is varus or valgus.
     *
     * @param range what is normal for age, when it is known
     */
    public static String of(Quantity quantity, double value, Optional<NormalRange> range) {
        return range.flatMap(normal -> jointAngle(quantity, value, normal)).orElseGet(() -> of(quantity, value));
    }

    /** A normal range in words: {@code 85 to 90°}, {@code 1° valgus to 3.2° varus}, {@code 0 to 2° opens laterally}. */
    public static String of(NormalRange range) {
        var quantity = range.quantity();
        if (isJointAngle(quantity)) {
            return Texts.text("reading.range", shortest(range.low()), shortest(range.high()));
        }
        var low = range.low() < 0 ? shorter(quantity, range.low()) : shortest(range.low());
        return Texts.text("reading.range.words", low, shorter(quantity, range.high()));
    }

    /** How far a second reading of the same film may differ: {@code ± 1.1°}; empty where that is not known. */
    public static Optional<String> error(Quantity quantity) {
        var halfWidth = ReaderError.halfWidth95(quantity);
        return halfWidth.isEmpty()
                ? Optional.empty()
                : Optional.of(Texts.text("reading.error", brief(quantity, halfWidth.getAsDouble())));
    }

    /** The value as it stands at a mark of a chart, where side and direction are the chart's: {@code 7.2°}. */
    public static String brief(Quantity quantity, double value) {
        return switch (quantity.unit()) {
            case DEGREES -> Texts.text("reading.text.angle.alone", signed(value));
            case MILLIMETRES -> Texts.text("reading.text.length", signed(value));
            case PERCENT -> Texts.text("reading.text.percent.alone", signed(value));
        };
    }

    /** A number without unit, to two decimals. */
    public static String plain(double value) {
        return new DecimalFormat("0.00", DecimalFormatSymbols.getInstance(Texts.language()))
                .format(value)
                .replace('-', '\u2212');
    }

    /** How a quantity is called. */
    public static String label(Quantity quantity) {
        return Texts.text("reading.quantity." + quantity.name());
    }

    private static boolean isJointAngle(Quantity quantity) {
        return switch (quantity) {
            case MLDFA, MMPTA, LDTA, LPFA, ALDFA -> true;
            default -> false;
        };
    }

    private static Optional<String> jointAngle(Quantity quantity, double value, NormalRange range) {
        if (!isJointAngle(quantity)) {
            return Optional.empty();
        }
        boolean isVarus = quantity == Quantity.MMPTA ? value < range.low() : value > range.high();
        var word = range.contains(value) ? "reading.neutral" : isVarus ? "reading.varus" : "reading.valgus";
        return Optional.of(Texts.text("reading.text.angle", signed(value), Texts.text(word)));
    }

    /** Where no range is known it is neither varus nor valgus: which of the two angles it is, is said instead. */
    private static String jointAngle(double value, String which) {
        return Texts.text("reading.text.joint-angle", signed(value), Texts.text(which));
    }

    private static String deviation(double value, String above, String below, String none) {
        return Texts.text("reading.text.angle", size(value), direction(value, above, below, none));
    }

    /** A place along a line from its medial end, 0, to its lateral, 100; beyond either end it is counted from there. */
    private static String share(double percent) {
        if (percent > 100) {
            return Texts.text("reading.text.percent.beyond-lateral", size(percent - 100));
        }
        boolean isBeyondMedial = percent < 0 && !size(percent).equals(size(0));
        return Texts.text(
                isBeyondMedial ? "reading.text.percent.beyond-medial" : "reading.text.percent", size(percent));
    }

    private static String direction(double value, String above, String below, String none) {
        if (size(value).equals(size(0))) {
            return Texts.text(none);
        }
        return Texts.text(value > 0 ? above : below);
    }

    private static String size(double value) {
        return number(Math.abs(value));
    }

    /** As {@link #of(Quantity, double)}, without a decimal that is nought. */
    private static String shorter(Quantity quantity, double value) {
        return of(quantity, value).replace(size(value), shortest(Math.abs(value)));
    }

    private static String shortest(double value) {
        return new DecimalFormat("0.#", DecimalFormatSymbols.getInstance(Texts.language()))
                .format(value)
                .replace('-', '\u2212');
    }

    static String signed(double value) {
        boolean isZero = number(value).equals("-" + number(0));
        return isZero ? number(0) : number(value).replace('-', '\u2212');
    }

    private static String number(double value) {
        var format = new DecimalFormat("0.0", DecimalFormatSymbols.getInstance(Texts.language()));
        format.setRoundingMode(RoundingMode.HALF_UP);
        return format.format(value);
    }
}
