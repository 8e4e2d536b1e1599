package org.espalier.treatment;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.espalier.patient.FactId;

/**
 * All that was written down of one kind, superseded facts too.
 *
 * @param all as written, the first first
 */
public record FactLog<F extends TreatmentFact>(List<Written<F>> all) {

    public FactLog {
        all = List.copyOf(all);
    }

    /** Those that stand, by the day they are about. */
    public List<Written<F>> standing() {
        var superseded = new HashSet<FactId>();
        all.stream().map(Written::supersedes).filter(Objects::nonNull).forEach(superseded::add);
        return all.stream()
                .filter(one -> one.fact() != null && !superseded.contains(one.id()))
                .sorted(Comparator.<Written<F>, LocalDate>comparing(
                                one -> Objects.requireNonNull(one.fact()).on())
                        .thenComparing(Written::at))
                .toList();
    }

    /** What stands, by the day it is about. */
    public List<F> facts() {
        return standing().stream()
                .flatMap(one -> Optional.ofNullable(one.fact()).stream())
                .toList();
    }

    FactLog<F> with(Written<F> one) {
        var more = new ArrayList<>(all);
        more.add(one);
        return new FactLog<>(more);
    }

    boolean isSuperseded(FactId id) {
        return all.stream().anyMatch(one -> id.equals(one.supersedes()));
    }

    Optional<Written<F>> find(FactId id) {
        return all.stream().filter(one -> one.id().equals(id)).findFirst();
    }

    /** The fact and all that it stands in place of, the newest first. */
    Set<FactId> line(Written<F> newest) {
        var line = new LinkedHashSet<FactId>();
        var one = Optional.of(newest);
        while (one.isPresent()) {
            line.add(one.get().id());
            one = Optional.ofNullable(one.get().supersedes()).flatMap(this::find);
        }
        return line;
    }

    /** The fact with which it began, however often it was changed. */
    FactId first(Written<F> newest) {
        return line(newest).stream().reduce((newer, older) -> older).orElse(newest.id());
    }
}
