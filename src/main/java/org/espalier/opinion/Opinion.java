package org.espalier.opinion;

import java.time.Instant;
import java.util.Optional;
import java.util.UUID;
import org.espalier.access.StaffId;

/**
 * An opinion given. It is not edited; a later one may stand in its place, and both stay.
 *
 * @param supersedes the earlier one of the same person
 * @param superseded whether a later one stands in its place
 */
public record Opinion(
        UUID id,
        StaffId author,
        String name,
        OpinionData data,
        Optional<UUID> supersedes,
        boolean superseded,
        Instant at) {}
