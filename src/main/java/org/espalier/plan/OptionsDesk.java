package org.espalier.plan;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import org.espalier.cost.CostEstimate;
import org.espalier.prognosis.Ahead;
import org.espalier.science.quantity.Side;
import org.springframework.stereotype.Component;

/** Reckons the options of a limb and what each would cost at the child's hospital. */
@Component
class OptionsDesk {

    private final OptionCosts costs;

    OptionsDesk(OptionCosts costs) {
        this.costs = costs;
    }

    /** Empty when neither physis of the knee is followed. */
    Optional<Options> of(Ahead ahead, Side side) {
        return ahead.limb(side)
                .map(limb -> new OptionsReckoning(ahead, limb).options())
                .map(this::priced);
    }

    private Options priced(Options options) {
        var site = options.ahead().prognosis().child().site();
        Map<Option, CostEstimate> reckoned = new EnumMap<>(Option.class);
        options.open().forEach(option -> costs.of(site, option).ifPresent(cost -> reckoned.put(option.option(), cost)));
        return options.with(reckoned);
    }
}
