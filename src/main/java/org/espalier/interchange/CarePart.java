package org.espalier.interchange;

import java.util.List;
import java.util.Map;
import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;

/** Care of the limbs, taken after the visits: when the last limb is let go, the open visit is over. */
@Component
@Order(9)
class CarePart implements ClinicPart {

    private final CareSheet steps;
    private final FactTaking facts;

    CarePart(CareSheet steps, FactTaking facts) {
        this.steps = steps;
        this.facts = facts;
    }

    @Override
    public void take(Taking taking) {
        taking.rows(ClinicFile.CARE).forEach(row -> taking.take(row, () -> facts.take(taking, row, steps)));
    }

    @Override
    public Map<ClinicFile, List<List<String>>> rows(Giving giving) {
        return Map.of(ClinicFile.CARE, facts.rows(giving, steps));
    }
}
