package org.espalier.access;

import java.time.Instant;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * Who saw a child.
 *
 * @param looks the newest first
 * @param complete whether there is nothing older than the last look
 */
public record WhoSaw(List<Look> looks, boolean complete) {

    /**
     * A person among them.
     *
     * @param who null for a job of the house
     * @param worksAt the hospitals they worked at at the time
     */
    public record Person(@Nullable String who, Set<SiteId> worksAt, int times, Instant first, Instant last) {}

    /** Each once, who looked last first. */
    public List<Person> people() {
        var byPerson = looks.stream()
                .collect(Collectors.groupingBy(
                        look -> Optional.ofNullable(look.staff()), LinkedHashMap::new, Collectors.toList()));
        return byPerson.values().stream()
                .map(WhoSaw::person)
                .sorted(Comparator.comparing(Person::last).reversed())
                .toList();
    }

    private static Person person(List<Look> looks) {
        var sites = looks.stream().flatMap(look -> look.worksAt().stream()).collect(Collectors.toUnmodifiableSet());
        return new Person(
                looks.getFirst().who(),
                sites,
                looks.size(),
                looks.getLast().at(),
                looks.getFirst().at());
    }
}
