package org.espalier.film;

import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;

/**
 * A film in the tray: of no child yet, or kept aside.
 *
 * @param originalName what the sender called the file
 * @param label what the film says about whom it shows
 * @param aside why it cannot be shown; empty when it only waits for a child
 */
public record TrayItem(
        FilmId film,
        long version,
        FilmState state,
        FilmKind kind,
        String originalName,
        FilmLabel label,
        Optional<LocalDate> takenOn,
        Optional<AsideReason> aside,
        Instant receivedAt) {}
