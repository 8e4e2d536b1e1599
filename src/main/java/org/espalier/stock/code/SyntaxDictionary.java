package org.espalier.stock.code;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Every application identifier and what may follow it, read from the GS1 Barcode Syntax Dictionary, which is shipped as
 * published (Apache-2.0; its notice stands at its head).
 */
final class SyntaxDictionary {

    static final SyntaxDictionary GS1 = new SyntaxDictionary();

    private static final int LONGEST = 4;

    private final Map<String, ApplicationIdentifier> identifiers = new TreeMap<>();

    private SyntaxDictionary() {
        lines("gs1-syntax-dictionary.txt").forEach(this::add);
    }

    /** The lines of a file beside this class that are neither blank nor remarks. */
    static List<String> lines(String name) {
        var stream = Objects.requireNonNull(SyntaxDictionary.class.getResourceAsStream(name), name);
        try (var reader = new BufferedReader(new InputStreamReader(stream, StandardCharsets.UTF_8))) {
            return reader.lines()
                    .filter(line -> !line.isBlank() && !line.startsWith("#"))
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    Collection<ApplicationIdentifier> all() {
        return identifiers.values();
    }

    Optional<ApplicationIdentifier> find(String digits) {
        return Optional.ofNullable(identifiers.get(digits));
    }

    /** The identifier a string begins with; none is the beginning of another. */
    Optional<ApplicationIdentifier> at(String text) {
        for (int length = 2; length <= Math.min(LONGEST, text.length()); length++) {
            var found = find(text.substring(0, length));
            if (found.isPresent()) {
                return found;
            }
        }
        return Optional.empty();
    }

    private void add(String line) {
        int remark = line.indexOf(" # ");
        var title = remark < 0 ? "" : line.substring(remark + 3).strip();
        var words = (remark < 0 ? line : line.substring(0, remark)).strip().split("\\s+");
        var components = new ArrayList<Component>();
        var required = new ArrayList<List<String>>();
        var excluded = new ArrayList<String>();
        for (var word : Arrays.copyOfRange(words, 1, words.length)) {
            if (Component.isComponent(word)) {
                components.add(Component.of(word));
            } else if (word.startsWith("req=")) {
                groups(word).forEach(group -> required.add(List.of(group.split("\\+"))));
            } else if (word.startsWith("ex=")) {
                excluded.addAll(groups(word));
            }
        }
        boolean predefined = !Component.isComponent(words[1]) && words[1].contains("*");
        range(words[0])
                .forEach(digits -> identifiers.put(
                        digits, new ApplicationIdentifier(digits, predefined, components, required, excluded, title)));
    }

    private static List<String> groups(String attribute) {
        return List.of(attribute.substring(attribute.indexOf('=') + 1).split(","));
    }

    private static List<String> range(String word) {
        var ends = word.split("-");
        var digits = new ArrayList<String>();
        for (int at = Integer.parseInt(ends[0]); at <= Integer.parseInt(ends[ends.length - 1]); at++) {
            digits.add("0".repeat(ends[0].length() - String.valueOf(at).length()) + at);
        }
        return digits;
    }
}
