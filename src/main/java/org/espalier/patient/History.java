package org.espalier.patient;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * All that was written down of one kind, superseded facts too.
 *
 * @param facts as written, the first first
 */
public record History<F extends Finding>(List<Fact<F>> facts) {

    public History {
        facts = List.copyOf(facts);
    }

    /** The facts that stand, by the day they are about. */
    public List<Fact<F>> standing() {
        var superseded = new HashSet<FactId>();
        facts.stream().map(Fact::supersedes).filter(Objects::nonNull).forEach(superseded::add);
        return facts.stream()
                .filter(fact -> fact.finding() != null && !superseded.contains(fact.id()))
                .sorted(Comparator.<Fact<F>, LocalDate>comparing(Fact::on).thenComparing(Fact::at))
                .toList();
    }

    /** The findings that stand, by the day they are about. */
    public List<F> findings() {
        return standing().stream()
                .flatMap(fact -> Stream.ofNullable(fact.finding()))
                .toList();
    }

    /** The finding that stands and is about the latest day. */
    public Optional<F> latest() {
        var standing = standing();
        return standing.isEmpty()
                ? Optional.empty()
                : Optional.ofNullable(standing.getLast().finding());
    }
}
