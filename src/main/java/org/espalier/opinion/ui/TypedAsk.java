package org.espalier.opinion.ui;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.espalier.film.Cover;
import org.espalier.opinion.Advice;
import org.jspecify.annotations.Nullable;

/**
 * A question in the making, as it is kept while it is written.
 *
 * @param thread the number it will have, so that it is asked once
 * @param films films, photos and clips that are to be shown
 * @param covers what is covered of each of them
 * @param checked those the asker has looked at as they will be shown
 */
record TypedAsk(
        UUID thread,
        String question,
        Set<Advice> wanted,
        String place,
        String dueBy,
        boolean hasFrame,
        boolean hasMri,
        @Nullable Integer weeks,
        String consent,
        Set<UUID> colleagues,
        @Nullable UUID panel,
        boolean everybody,
        String until,
        List<UUID> films,
        Map<UUID, List<Cover>> covers,
        Set<UUID> checked,
        Set<UUID> facts) {

    static TypedAsk begun(UUID thread) {
        return new TypedAsk(
                thread,
                "",
                new HashSet<>(),
                "",
                "",
                false,
                false,
                null,
                "",
                new HashSet<>(),
                null,
                false,
                "",
                new ArrayList<>(),
                new HashMap<>(),
                new HashSet<>(),
                new HashSet<>());
    }
}
