package org.espalier.platform;

import java.time.Instant;
import java.util.UUID;

/**
 * What a person is in the middle of typing or drawing.
 *
 * @param kind what is being made, in small letters and hyphens
 * @param subject what it is about
 * @param revision counts the changes; a later one is greater
 * @param content the state of the screen as JSON
 * @param savedAt when this revision was kept
 */
public record Draft(String kind, UUID subject, long revision, String content, Instant savedAt) {}
