package org.espalier.science.alignment;

import java.util.EnumMap;
import java.util.Map;
import java.util.OptionalDouble;
import org.espalier.science.quantity.PrintedTable;

/**
 * How far a reading of the same film differs when it is read again: half the width of its 95 % range, in the quantity's
 * unit. What the limb's position on another day adds is not in it: see {@link ChangeLimit}.
 *
 * <p>Source: Braun and others, J Orthop Surg Res 2023;18:69.
 */
public final class ReaderError {

    private static final Map<Quantity, Double> HALF_WIDTHS = read();

    private ReaderError() {}

    /**
     * The half-width for one reading.
     *
     * @param quantity the quantity
     * @return in its unit, above 0; empty where none is published
     */
    public static OptionalDouble halfWidth95(Quantity quantity) {
        Double halfWidth = HALF_WIDTHS.get(quantity);
        return halfWidth == null ? OptionalDouble.empty() : OptionalDouble.of(halfWidth);
    }

    /**
     * The half-width for the difference of two readings, √2 times that of one.
     *
     * @param quantity the quantity
     * @return in its unit, above 0; empty where none is published
     */
    public static OptionalDouble halfWidth95OfChange(Quantity quantity) {
        OptionalDouble one = halfWidth95(quantity);
        return one.isPresent() ? OptionalDouble.of(Math.sqrt(2) * one.getAsDouble()) : one;
    }

    private static Map<Quantity, Double> read() {
        Map<Quantity, Double> halfWidths = new EnumMap<>(Quantity.class);
        for (PrintedTable.Row row :
                PrintedTable.of(ReaderError.class, "reader-error.csv").rows()) {
            halfWidths.put(Quantity.ofCode(row.text("quantity")).orElseThrow(), row.number("half_width_95"));
        }
        return halfWidths;
    }
}
