package org.espalier.access;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * One row of the table of permissions: who may take a route, call an endpoint or a service method.
 *
 * @param keys what opens it: names of roles, or one of the words below
 */
record Permission(Kind kind, String name, Set<String> keys) {

    /** Everybody, signed in or not. */
    static final String PUBLIC = "PUBLIC";

    /** Whoever is signed in. */
    static final String ANY = "ANY";

    /** Who runs the network. */
    static final String OPERATOR = "OPERATOR";

    /** Whoever is signed in with a password that must be changed before anything else. */
    static final String NEWCOMER = "NEWCOMER";

    /** Whoever gave a password and must still give a second factor. */
    static final String HALFWAY = "HALFWAY";

    private static final Set<String> WORDS = Set.of(PUBLIC, ANY, OPERATOR, NEWCOMER, HALFWAY);
    private static final Set<String> ROLES =
            EnumSet.allOf(Role.class).stream().map(Role::name).collect(Collectors.toSet());

    /** What a row is about, and so how its name reads. */
    enum Kind {
        /** A screen, {@code /course/{child}}. */
        ROUTE,
        /** A request, {@code GET /api/films/*}. */
        ENDPOINT,
        /** A method, {@code FilmService.receive}. */
        SERVICE
    }

    Permission {
        keys.stream()
                .filter(key -> !WORDS.contains(key) && !ROLES.contains(key))
                .forEach(key -> {
                    throw new IllegalArgumentException("no such role: " + key + " of " + name);
                });
        if (keys.isEmpty()) {
            throw new IllegalArgumentException("nobody may: " + name);
        }
    }

    static Permission of(String kind, String name, String keys) {
        return new Permission(
                Kind.valueOf(kind.toUpperCase(Locale.ROOT)), name, Set.copyOf(Arrays.asList(keys.split(" "))));
    }

    boolean isPublic() {
        return keys.contains(PUBLIC);
    }

    boolean isForNewcomers() {
        return keys.contains(NEWCOMER);
    }

    boolean isForHalfway() {
        return keys.contains(HALFWAY);
    }

    boolean opensTo(Standing standing) {
        return keys.contains(ANY)
                || keys.contains(OPERATOR) && standing.operator()
                || standing.held().stream()
                        .anyMatch(held -> keys.contains(held.role().name()));
    }
}
