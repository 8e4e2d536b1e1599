package org.espalier.film.internal.dicom;

import java.util.ArrayList;
import java.util.List;

/**
 * A window over values (PS3.3 section C.11.2.1.2).
 *
 * @param center its middle
 * @param width its width, at least 1 for {@link Function#LINEAR}, else positive
 * @param function how light rises across it
 * @param explanation what the sender calls it; may be empty
 */
public record Window(double center, double width, Function function, String explanation) implements Voi {

    /** How light rises across a window: VOI LUT Function (section C.11.2.1.3). */
    public enum Function {
        /** Section C.11.2.1.2.1, for integers: the window ends half a value inside its nominal edges. */
        LINEAR,
        /** Section C.11.2.1.3.2. */
        LINEAR_EXACT,
        /** Section C.11.2.1.3.1. */
        SIGMOID;

        boolean allows(double width) {
            return Double.isFinite(width) && (this == LINEAR ? width >= 1 : width > 0);
        }
    }

    public Window {
        if (!Double.isFinite(center) || !function.allows(width)) {
            throw new IllegalArgumentException("window " + center + ", " + width + ", " + function);
        }
    }

    /** A straight window from black at the least to white at the greatest value. */
    public static Window spanning(double least, double greatest) {
        return new Window((least + greatest) / 2, Math.max(greatest - least, 1), Function.LINEAR_EXACT, "");
    }

    /** The windows of a data set, those without sense left out; an unknown function makes them all linear. */
    static List<Window> of(DataSet dataSet) {
        List<Double> centers = dataSet.decimals(Tag.WINDOW_CENTER);
        List<Double> widths = dataSet.decimals(Tag.WINDOW_WIDTH);
        List<String> explanations = dataSet.strings(Tag.WINDOW_EXPLANATION);
        Function function =
                switch (dataSet.string(Tag.VOI_LUT_FUNCTION).orElse("")) {
                    case "SIGMOID" -> Function.SIGMOID;
                    case "LINEAR_EXACT" -> Function.LINEAR_EXACT;
                    default -> Function.LINEAR;
                };
        List<Window> windows = new ArrayList<>();
        for (int i = 0; i < Math.min(centers.size(), widths.size()); i++) {
            if (function.allows(widths.get(i))) {
                String explanation = i < explanations.size() ? explanations.get(i) : "";
                windows.add(new Window(centers.get(i), widths.get(i), function, explanation));
            }
        }
        return List.copyOf(windows);
    }

    @Override
    public double light(double value) {
        return switch (function) {
            case LINEAR -> linear(value);
            case LINEAR_EXACT -> Math.clamp((value - center) / width + 0.5, 0, 1);
            case SIGMOID -> 1 / (1 + Math.exp(-4 * (value - center) / width));
        };
    }

    /** With a width of 1 the window is a step, which the comparisons of the standard decide before any division. */
    private double linear(double value) {
        double half = (width - 1) / 2;
        if (value <= center - 0.5 - half) {
            return 0;
        }
        return value > center - 0.5 + half ? 1 : (value - (center - 0.5)) / (width - 1) + 0.5;
    }
}
