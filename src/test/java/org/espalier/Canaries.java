package org.espalier;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Queue;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.stream.Stream;
import org.espalier.patient.ChildData;
import org.espalier.science.quantity.Sex;
import org.springframework.stereotype.Component;

/**
 * Names and numbers that must turn up nowhere. Every application under test has a hospital abroad with a child, its
 * films and readings; no test works there, so no answer at all may hold a word of it. Logs may hold neither that child
 * nor the one that tests do work with.
 */
@Component
class Canaries {

    private static final ChildData CHILD_ABROAD =
            new ChildData("Goldhahn-Canary", "Serafine-Canary", LocalDate.of(2017, 3, 9), Sex.FEMALE, "CANARY-5519");

    /** Words that no answer may hold. */
    static final List<String> ABROAD = words(CHILD_ABROAD);

    /** Words that no log may hold. */
    static final List<String> ANYWHERE =
            Stream.concat(ABROAD.stream(), words(TestWorld.CHILD).stream()).toList();

    private static final Queue<String> FOUND = new ConcurrentLinkedQueue<>();

    private final TestWorld world;
    private boolean planted;

    Canaries(TestWorld world) {
        this.world = world;
    }

    /** Makes the hospital abroad, once. */
    synchronized void plant() {
        if (!planted) {
            world.hospital(CHILD_ABROAD);
            planted = true;
        }
    }

    /** Remembers each of the words that the text holds, in capitals or not. */
    static void search(Collection<String> words, String text, String where) {
        var small = text.toLowerCase(Locale.ROOT);
        words.stream()
                .filter(word -> small.contains(word.toLowerCase(Locale.ROOT)))
                .forEach(word -> FOUND.add(word + " in " + where));
    }

    /** What was found since it was last asked. */
    static List<String> found() {
        var found = new ArrayList<String>();
        for (var one = FOUND.poll(); one != null; one = FOUND.poll()) {
            found.add(one);
        }
        return found;
    }

    private static List<String> words(ChildData child) {
        return Stream.of(child.familyName(), child.givenName(), child.localNumber())
                .map(String::valueOf)
                .toList();
    }
}
