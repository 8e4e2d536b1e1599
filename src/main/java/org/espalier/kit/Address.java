package org.espalier.kit;

import com.vaadin.flow.router.BeforeEnterEvent;
import java.util.Optional;
import java.util.UUID;

/** The ids that the address of a screen names. What is no id names nothing. */
public final class Address {

    private Address() {}

    /** The id that stands in the path under a name. */
    public static Optional<UUID> id(BeforeEnterEvent event, String name) {
        return event.getRouteParameters().get(name).flatMap(Address::id);
    }

    /** The id that is asked for under a name behind the path. */
    public static Optional<UUID> asked(BeforeEnterEvent event, String name) {
        return event.getLocation().getQueryParameters().getSingleParameter(name).flatMap(Address::id);
    }

    public static Optional<UUID> id(String text) {
        try {
            return Optional.of(UUID.fromString(text));
        } catch (IllegalArgumentException notAnId) {
            return Optional.empty();
        }
    }
}
