package org.espalier.treatment.ui;

import com.vaadin.flow.router.BeforeEnterEvent;
import java.util.Optional;
import java.util.UUID;
import org.espalier.patient.ChildId;

/** The child and other ids that an address names. What is no id names nothing. */
final class ChildOfAddress {

    private ChildOfAddress() {}

    static Optional<ChildId> child(BeforeEnterEvent event) {
        return event.getRouteParameters()
                .get("child")
                .flatMap(ChildOfAddress::uuid)
                .map(ChildId::new);
    }

    static Optional<UUID> parameter(BeforeEnterEvent event, String name) {
        return event.getLocation().getQueryParameters().getSingleParameter(name).flatMap(ChildOfAddress::uuid);
    }

    private static Optional<UUID> uuid(String text) {
        try {
            return Optional.of(UUID.fromString(text));
        } catch (IllegalArgumentException notAnId) {
            return Optional.empty();
        }
    }
}
