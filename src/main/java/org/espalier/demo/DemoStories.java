package org.espalier.demo;

import java.util.List;
import java.util.stream.Stream;

/** Every invented child. Names, numbers, hospitals and country belong to nobody. */
final class DemoStories {

    private DemoStories() {}

    static List<DemoStory> all() {
        return Stream.of(HarbourStories.all(), ValleyStories.all(), MoorStories.all())
                .flatMap(List::stream)
                .toList();
    }

    /** One child at each hospital whose newest film was sent under a wrong number or day of birth. */
    static List<DemoStory> mistyped() {
        return Stream.of(HarbourStories.all(), ValleyStories.all(), MoorStories.all())
                .map(stories -> stories.get(2))
                .toList();
    }
}
