package org.espalier.treatment;

import java.time.Instant;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.espalier.access.SiteId;
import org.jspecify.annotations.Nullable;

/**
 * A procedure as it was written down.
 *
 * @param site the hospital that wrote it down
 * @param on the day it was done
 * @param data empty when this only withdraws the one it supersedes
 * @param by name of who wrote it down; null for the house itself
 * @param supersedes the one this stands in place of
 * @param reason why, when it supersedes one
 */
public record Procedure(
        ProcedureId id,
        SiteId site,
        LocalDate on,
        Optional<ProcedureData> data,
        @Nullable String by,
        Instant at,
        Optional<ProcedureId> supersedes,
        @Nullable String reason) {

    Procedure withData(Optional<ProcedureData> other) {
        return new Procedure(id, site, on, other, by, at, supersedes, reason);
    }

    /**
     * The first record of the procedure, in place of which the given one stands at last; itself when there was none
     * before.
     */
    public static ProcedureId first(List<Procedure> all, ProcedureId id) {
        return all.stream()
                .filter(one -> one.id().equals(id))
                .findFirst()
                .flatMap(Procedure::supersedes)
                .map(earlier -> first(all, earlier))
                .orElse(id);
    }

    /** Those of the given procedures that stand, by the day they were done. */
    static List<Procedure> standing(List<Procedure> all) {
        Set<ProcedureId> superseded = new HashSet<>();
        all.forEach(one -> one.supersedes().ifPresent(superseded::add));
        return all.stream()
                .filter(one -> one.data().isPresent() && !superseded.contains(one.id()))
                .sorted(Comparator.comparing(Procedure::on).thenComparing(Procedure::at))
                .toList();
    }
}
