package org.espalier.access;

import java.util.List;
import java.util.Map;
import java.util.UUID;

/**
 * What the privacy officer asked for.
 *
 * @param lines newest first
 * @param numbers the local number of each child named, where it has one
 * @param complete whether there is nothing older than the last line
 */
public record AccessReport(List<AccessLine> lines, Map<UUID, String> numbers, boolean complete) {}
