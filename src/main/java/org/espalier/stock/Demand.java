package org.espalier.stock;

import java.util.Map;

/**
 * What operations took of a product in the last time.
 *
 * @param operationsBySize how many operations took so many pieces
 * @param usable how many pieces lie usable
 * @param onTheWay how many come from other hospitals
 */
public record Demand(Product product, Map<Integer, Integer> operationsBySize, int usable, int onTheWay) {

    public Demand {
        operationsBySize = Map.copyOf(operationsBySize);
    }

    /** How many operations took of it. */
    public int operations() {
        return operationsBySize.values().stream().mapToInt(Integer::intValue).sum();
    }
}
