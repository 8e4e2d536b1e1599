package org.espalier.cost;

import java.util.Optional;
import org.espalier.access.SiteId;
import org.espalier.patient.ChildId;

/** A charge that is to be written down. */
record NewCharge(
        ChargeId id,
        SiteId site,
        ChildId child,
        ChargeLine line,
        Optional<ChargeId> reverses,
        Optional<ChargeId> adjusts,
        Optional<String> reason) {

    static NewCharge of(ChargeId id, SiteId site, ChildId child, ChargeLine line) {
        return new NewCharge(id, site, child, line, Optional.empty(), Optional.empty(), Optional.empty());
    }

    static NewCharge reversing(ChargeId id, Charge charge, String reason) {
        return new NewCharge(
                id,
                charge.site(),
                charge.child(),
                charge.line().negated(),
                Optional.of(charge.id()),
                Optional.empty(),
                Optional.of(reason));
    }
}
