package org.espalier.stock;

import java.util.Collections;
import java.util.List;
import org.espalier.science.statistics.CompoundPoisson;

/**
 * How many pieces of a product to order, with the arithmetic.
 *
 * @param inLeadTime mean number of operations until goods come
 * @param mean mean number of pieces until then
 * @param level the least stock that is enough with the chosen chance
 * @param sufficient the chance that what is there and on its way is enough
 * @param order how many are missing to the level
 */
public record OrderProposal(Demand demand, double inLeadTime, double mean, int level, double sufficient, int order) {

    private static final double YEAR_DAYS = 365;

    /** From what operations took in a year. */
    static OrderProposal of(Demand demand, OrderRule rule) {
        double operations =
                Math.min(demand.operations() * rule.leadDays() / YEAR_DAYS, CompoundPoisson.MOST_OPERATIONS);
        var pieces = CompoundPoisson.ofPast(operations, taken(demand));
        int level = pieces.stockFor(rule.service());
        int there = demand.usable() + demand.onTheWay();
        return new OrderProposal(
                demand, operations, pieces.mean(), level, pieces.atMost(there), Math.max(0, level - there));
    }

    private static List<Integer> taken(Demand demand) {
        return demand.operationsBySize().entrySet().stream()
                .flatMap(size -> Collections.nCopies(size.getValue(), size.getKey()).stream())
                .toList();
    }
}
