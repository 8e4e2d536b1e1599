package org.espalier.platform;

import java.time.Instant;
import java.util.UUID;

/**
 * What a person is in the middle of typing or drawing.
 *
 * @param id its own, from start to discard; what comes of it may bear the same id, so that it comes of it once
 * @param kind what is being made, in small letters and hyphens
 * @param subject what it is about
 * @param revision counts the changes from 1; a later one is greater
 * @param content the state of the screen as JSON
 * @param savedAt when this revision was kept
 */
public record Draft(
        UUID id, String kind, UUID subject, long revision, String content, Instant startedAt, Instant savedAt) {}
