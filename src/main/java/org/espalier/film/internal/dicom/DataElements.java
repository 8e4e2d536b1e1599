package org.espalier.film.internal.dicom;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/** The registry of data elements of PS3.6, needed where a file does not name its value representations. */
final class DataElements {

    private static final String TABLE = "data-elements.txt";
    private static final DataElements REGISTRY = load();

    private final Map<Integer, Vr> representations = new HashMap<>();
    private final Map<Integer, String> keywords = new HashMap<>();

    private DataElements() {}

    /** The value representation of a tag; {@link Vr#UN} when it is not registered. */
    static Vr representation(Tag tag) {
        if (tag.element() == 0) {
            return Vr.UL;
        }
        if (tag.isPrivate()) {
            return tag.element() >= 0x10 && tag.element() <= 0xFF ? Vr.LO : Vr.UN;
        }
        return REGISTRY.representations.getOrDefault(registered(tag), Vr.UN);
    }

    static Optional<String> keyword(Tag tag) {
        return Optional.ofNullable(REGISTRY.keywords.get(registered(tag)));
    }

    /** Repeating groups 50xx and 60xx are registered once. */
    private static int registered(Tag tag) {
        int family = tag.group() & 0xFF00;
        return family == 0x5000 || family == 0x6000 ? tag.value() & 0xFF00FFFF : tag.value();
    }

    private static DataElements load() {
        DataElements elements = new DataElements();
        try (InputStream table = Objects.requireNonNull(DataElements.class.getResourceAsStream(TABLE), TABLE);
                BufferedReader lines = new BufferedReader(new InputStreamReader(table, StandardCharsets.US_ASCII))) {
            lines.lines().filter(line -> !line.startsWith("#")).forEach(elements::add);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return elements;
    }

    private void add(String line) {
        int tag = Integer.parseUnsignedInt(line, 0, 8, 16);
        representations.put(tag, Vr.valueOf(line.substring(9, 11)));
        keywords.put(tag, line.substring(12));
    }
}
