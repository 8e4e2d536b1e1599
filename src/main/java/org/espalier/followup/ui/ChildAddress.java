package org.espalier.followup.ui;

import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.NotFoundException;
import java.util.Optional;
import org.espalier.kit.Address;
import org.espalier.patient.Child;
import org.espalier.patient.ChildId;
import org.espalier.patient.PatientService;

/** The child an address names. A child that is not there and one behind a wall look the same. */
final class ChildAddress {

    private ChildAddress() {}

    /** Opens the record of the child that the address names, or shows that nothing is there. */
    static Optional<Child> open(BeforeEnterEvent event, PatientService patients, String part) {
        var child = Address.id(event, "child").map(ChildId::new).flatMap(id -> patients.open(id, part));
        if (child.isEmpty()) {
            event.rerouteToError(NotFoundException.class);
        }
        return child;
    }
}
