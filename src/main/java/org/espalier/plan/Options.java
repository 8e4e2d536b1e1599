package org.espalier.plan;

import java.util.List;
import org.espalier.prognosis.Ahead;
import org.espalier.prognosis.LimbAhead;
import org.espalier.science.quantity.Side;

/**
 * All options of one limb, in their fixed order.
 *
 * @param ahead the facts and forecasts they rest on
 */
public record Options(Ahead ahead, LimbAhead limb, List<OptionOutlook> all) {

    public Options {
        all = List.copyOf(all);
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
