package org.espalier.platform;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** The words after a command: options with a value, switches, and the rest in order. */
public record CommandWords(Map<String, String> options, Set<String> switches, List<String> rest) {

    /**
     * Sorts the words.
     *
     * @throws IllegalArgumentException for an option nobody knows, or one without its value
     */
    public static CommandWords parse(List<String> words, Set<String> withValue, Set<String> without) {
        var options = new HashMap<String, String>();
        var switches = new HashSet<String>();
        var rest = new ArrayList<String>();
        var remaining = words.iterator();
        while (remaining.hasNext()) {
            var word = remaining.next();
            if (withValue.contains(word)) {
                if (!remaining.hasNext()) {
                    throw new IllegalArgumentException(word + " needs a value after it");
                }
                options.put(word, remaining.next());
            } else if (without.contains(word)) {
                switches.add(word);
            } else if (word.startsWith("--")) {
                throw new IllegalArgumentException("there is no option " + word);
            } else {
                rest.add(word);
            }
        }
        return new CommandWords(Map.copyOf(options), Set.copyOf(switches), List.copyOf(rest));
    }

    public Optional<String> option(String name) {
        return Optional.ofNullable(options.get(name));
    }
}
