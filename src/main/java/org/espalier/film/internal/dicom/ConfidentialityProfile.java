package org.espalier.film.internal.dicom;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * The basic application level confidentiality profile: what becomes of each attribute that may tell who somebody is.
 *
 * <p>Source: DICOM PS3.15 annex E, table E.1-1, edition 2024/25, as the resource beside says.
 */
public final class ConfidentialityProfile {

    private static final Map<String, String> ACTIONS = read();

    private ConfidentialityProfile() {}

    /**
     * The action for an attribute: {@code X} remove, {@code Z} empty, {@code D} dummy value, {@code U} new UID, or a
     * choice of them parted by strokes; empty for an attribute the profile leaves alone. Private attributes are
     * removed.
     */
    public static Optional<String> action(Tag tag) {
        if (tag.isPrivate()) {
            return Optional.of("X");
        }
        var name = tag.toHex().toLowerCase(Locale.ROOT);
        int family = tag.group() & 0xFF00;
        if (family == 0x5000) {
            return Optional.ofNullable(ACTIONS.get("50xxxxxx"));
        }
        return Optional.ofNullable(ACTIONS.get(family == 0x6000 ? "60xx" + name.substring(4) : name));
    }

    /** Whether the attribute may stand in a de-identified file with a value of this many bytes. */
    static boolean allows(Tag tag, int length) {
        return action(tag)
                .map(action -> action.contains("U") || length == 0 && action.contains("Z"))
                .orElse(true);
    }

    private static Map<String, String> read() {
        Map<String, String> actions = new HashMap<>();
        try (InputStream table = Objects.requireNonNull(
                        ConfidentialityProfile.class.getResourceAsStream("confidentiality-profile.csv"));
                BufferedReader lines = new BufferedReader(new InputStreamReader(table, StandardCharsets.UTF_8))) {
            lines.lines()
                    .filter(line -> !line.startsWith("#"))
                    .map(line -> line.split(",", 2))
                    .forEach(parts -> actions.put(parts[0], parts[1]));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return Map.copyOf(actions);
    }
}
