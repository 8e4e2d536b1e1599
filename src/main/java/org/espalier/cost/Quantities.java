package org.espalier.cost;

import java.math.BigDecimal;
import java.util.EnumMap;
import java.util.Map;

/** So many of each item, none below nothing. */
public record Quantities(Map<TariffItem, BigDecimal> of) {

    public static final Quantities NONE = new Quantities(Map.of());

    public Quantities {
        of.forEach((item, quantity) -> {
            if (quantity.signum() < 0 || item.isShare()) {
                throw new IllegalArgumentException("not so many of " + item + ": " + quantity);
            }
        });
        of = Map.copyOf(of);
    }

    /** Both together. */
    public Quantities plus(Quantities other) {
        var sum = new EnumMap<TariffItem, BigDecimal>(TariffItem.class);
        sum.putAll(of);
        other.of.forEach((item, quantity) -> sum.merge(item, quantity, BigDecimal::add));
        return new Quantities(sum);
    }

    /** With so many more of one item. */
    public Quantities with(TariffItem item, BigDecimal quantity) {
        return plus(new Quantities(Map.of(item, quantity)));
    }
}
