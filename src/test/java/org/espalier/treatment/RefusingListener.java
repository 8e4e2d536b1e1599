package org.espalier.treatment;

import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import org.espalier.patient.ChildId;
import org.springframework.context.event.EventListener;
import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;

/** Stands for whatever hangs on a procedure and cannot take it: it comes last, when all others have done their part. */
@Component
class RefusingListener {

    private final Set<ChildId> refused = ConcurrentHashMap.newKeySet();

    void refuse(ChildId child) {
        refused.add(child);
    }

    void accept(ChildId child) {
        refused.remove(child);
    }

    @EventListener
    @Order
    void on(ProcedureRecorded recorded) {
        if (refused.contains(recorded.child())) {
            throw new IllegalStateException("nothing of it is left on the shelf");
        }
    }
}
