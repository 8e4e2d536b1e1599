package org.espalier.followup;

import org.espalier.patient.ChildId;
import org.espalier.prognosis.ForecastsRenewed;
import org.espalier.reading.ReadingSigned;
import org.springframework.context.event.EventListener;
import org.springframework.stereotype.Component;

/**
 * Asks the rules again when a film was read, and when forecasts were made anew by other rates: what was unknown is
 * known.
 */
@Component
class ReadingListener {

    private final DueByService dueBy;

    ReadingListener(DueByService dueBy) {
        this.dueBy = dueBy;
    }

    @EventListener
    void askAgain(ReadingSigned signed) {
        dueBy.renew(new ChildId(signed.child()));
    }

    @EventListener
    void askAgain(ForecastsRenewed renewed) {
        dueBy.renew(renewed.child());
    }
}
