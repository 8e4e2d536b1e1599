package org.espalier.demo;

import java.nio.charset.StandardCharsets;
import java.util.UUID;

/** Ids that are the same at every start, so that a loading that was cut short can be taken up again. */
final class DemoIds {

    private DemoIds() {}

    static UUID of(String... parts) {
        String name = "espalier demonstration/" + String.join("/", parts);
        return UUID.nameUUIDFromBytes(name.getBytes(StandardCharsets.UTF_8));
    }
}
