package org.espalier.interchange;

import java.nio.charset.StandardCharsets;
import java.util.UUID;

/** Ids that follow from what they name, so that the same row taken twice is the same record. */
final class StableIds {

    private StableIds() {}

    static UUID of(UUID within, String... parts) {
        var name = "espalier interchange/" + within + "/" + String.join("/", parts);
        return UUID.nameUUIDFromBytes(name.getBytes(StandardCharsets.UTF_8));
    }
}
