package org.espalier.kit;

import java.math.RoundingMode;
import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import org.espalier.science.quantity.Angle;
import org.espalier.science.quantity.Length;
import org.espalier.science.quantity.Side;
import org.espalier.science.quantity.Weight;

/** Quantities as a clinician reads them: with unit, side and direction in words, and no more digits than they carry. */
public final class QuantityText {

    private static final String MINUS = "\u2212";
    private static final double LEAST_SHOWN_CHANCE = 0.01;

    private QuantityText() {}

    /** An angle that is its own direction by its name, such as mLDFA: {@code 87.3°}. */
    public static String of(Side side, Angle angle) {
        return Texts.text("kit.quantity.angle", Texts.of(side), number(angle.degrees(), "0.0"));
    }

    /** A deviation of the limb in the frontal plane: {@code Right 7.2° varus}. */
    public static String ofDeviation(Side side, Angle deviation) {
        return Texts.text("kit.quantity.of-side", Texts.of(side), ofDeviation(deviation));
    }

    /**
     * A deviation in the frontal plane whose side stands beside it: {@code 7.2° varus}.
     *
     * @param deviation positive in varus
     */
    public static String ofDeviation(Angle deviation) {
        var size = number(Math.abs(deviation.degrees()), "0.0");
        if (size.equals(number(0, "0.0"))) {
            return Texts.text("kit.quantity.straight", size);
        }
        return Texts.text(
                "kit.quantity.deviation",
                size,
                Texts.text(deviation.degrees() > 0 ? "kit.Deformity.VARUS" : "kit.Deformity.VALGUS"));
    }

    /**
     * A chance in whole percent; the ends of the scale are never said to be certain.
     *
     * @param chance from 0 to 1
     */
    public static String ofChance(double chance) {
        if (chance < LEAST_SHOWN_CHANCE) {
            return Texts.text("kit.quantity.chance.small");
        }
        return chance > 1 - LEAST_SHOWN_CHANCE
                ? Texts.text("kit.quantity.chance.large")
                : Texts.text("kit.quantity.chance", chance * 100);
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

    private static String number(double value, String pattern) {
        var format = new DecimalFormat(pattern, DecimalFormatSymbols.getInstance(Texts.language()));
        format.setRoundingMode(RoundingMode.HALF_UP);
        var text = format.format(value);
        boolean minusZero = text.startsWith("-") && text.chars().noneMatch(c -> c >= '1' && c <= '9');
        return minusZero ? text.substring(1) : text.replace("-", MINUS);
    }
}
