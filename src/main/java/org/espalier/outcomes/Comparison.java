package org.espalier.outcomes;

import java.util.List;
import java.util.Optional;
import org.espalier.science.statistics.Funnel;
import org.espalier.science.statistics.OverDispersion;
import org.espalier.science.statistics.Proportion;

/**
 * Hospitals side by side by one measure, in the order of their names: shown, not judged.
 *
 * @param hospitals all of the network of which any child counts, and the reader's own
 */
public record Comparison(Measure measure, List<HospitalCounts> hospitals) {

    /** A hospital whose numbers are told. */
    public record Unit(HospitalCounts hospital, Proportion share) {}

    public Comparison {
        hospitals = List.copyOf(hospitals);
    }

    /** Those whose numbers are told. */
    public List<Unit> units() {
        return hospitals.stream()
                .flatMap(hospital -> hospital.ended(measure).map(share -> new Unit(hospital, share)).stream())
                .toList();
    }

    /** Limits about the share of all that are told; empty with fewer than two, or where none or all came to it. */
    public Optional<Funnel> funnel() {
        var shares = shares();
        return shares.size() < 2 ? Optional.empty() : Funnel.of(shares);
    }

    /** How much more they differ than by chance. */
    public Optional<OverDispersion> overDispersion() {
        return funnel().flatMap(funnel -> OverDispersion.of(funnel, shares()));
    }

    private List<Proportion> shares() {
        return units().stream().map(Unit::share).toList();
    }
}
