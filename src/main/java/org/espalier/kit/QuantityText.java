package org.espalier.kit;

import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import org.espalier.science.quantity.Angle;
import org.espalier.science.quantity.Length;
import org.espalier.science.quantity.Side;
import org.espalier.science.quantity.Weight;

/** Quantities as a clinician reads them: with unit, side and direction in words, and no more digits than they carry. */
public final class QuantityText {

    private static final String MINUS = "\u2212";

    private QuantityText() {}

    /** An angle that is its own direction by its name, such as mLDFA: {@code 87.3°}. */
    public static String of(Side side, Angle angle) {
        return Texts.text("kit.quantity.angle", Texts.of(side), number(angle.degrees(), "0.0"));
    }

    /**
     * A deviation of the limb in the frontal plane: {@code Right 7.2° varus}.
     *
     * @param deviation positive in varus
     */
    public static String ofDeviation(Side side, Angle deviation) {
        var size = number(Math.abs(deviation.degrees()), "0.0");
        var direction = direction(size, deviation.degrees(), "kit.varus", "kit.valgus", "kit.straight");
        return Texts.text("kit.quantity.deviation", Texts.of(side), size, direction);
    }

    /** A length: {@code 342 mm}. */
    public static String of(Length length) {
        return Texts.text("kit.quantity.millimetres", number(length.millimetres(), "0"));
    }

    /** The height of a child: {@code 112.5 cm}. */
    public static String ofHeight(Length height) {
        return Texts.text("kit.quantity.centimetres", number(height.millimetres() / 10, "0.0"));
    }

    /** The weight of a child: {@code 19.4 kg}. */
    public static String of(Weight weight) {
        return Texts.text("kit.quantity.kilograms", number(weight.kilograms(), "0.0"));
    }

    /** A body mass index: {@code 17.2 kg/m²}. */
    public static String ofIndex(double kilogramsPerSquareMetre) {
        return Texts.text("kit.quantity.index", number(kilogramsPerSquareMetre, "0.0"));
    }

    private static String direction(String size, double value, String above, String below, String none) {
        boolean shownAsZero = size.chars().allMatch(c -> c == '0' || c == '.');
        if (shownAsZero) {
            return Texts.text(none);
        }
        return Texts.text(value > 0 ? above : below);
    }

    private static String number(double value, String pattern) {
        var format = new DecimalFormat(pattern, DecimalFormatSymbols.getInstance(Texts.language()));
        format.setRoundingMode(java.math.RoundingMode.HALF_UP);
        var text = format.format(value);
        boolean minusZero = text.startsWith("-") && text.chars().noneMatch(c -> c >= '1' && c <= '9');
        return minusZero ? text.substring(1) : text.replace("-", MINUS);
    }
}
