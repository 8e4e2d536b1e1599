package org.espalier.plan;

import java.util.List;
import java.util.Map;
import org.espalier.cost.CostEstimate;
import org.espalier.prognosis.Ahead;
import org.espalier.prognosis.LimbAhead;
import org.espalier.science.quantity.Side;

/**
 * All options of one limb, in their fixed order.
 *
 * @param ahead the facts and forecasts they rest on
 * @param costs of those that stand in the table, by the hospital's tariffs; empty for those who are told no costs
 */
public record Options(Ahead ahead, LimbAhead limb, List<OptionOutlook> all, Map<Option, CostEstimate> costs) {

    public Options {
        all = List.copyOf(all);
        costs = Map.copyOf(costs);
    }

    Options with(Map<Option, CostEstimate> reckoned) {
        return new Options(ahead, limb, all, reckoned);
    }

    public Side side() {
        return limb.side();
    }

    /** Those that stand in the table today. */
    public List<OptionOutlook> open() {
        return all.stream().filter(OptionOutlook::isOpen).toList();
    }

    /** Those that do not, each with its reason. */
    public List<OptionOutlook> closed() {
        return all.stream().filter(option -> !option.isOpen()).toList();
    }

    /** One of them in words. */
    public OptionCells inWords(OptionOutlook option) {
        return OptionWords.of(this, option);
    }
}
