package org.espalier.prognosis;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.espalier.patient.Examination;
import org.espalier.science.forecast.Deformity;
import org.espalier.science.forecast.PhysisSite;
import org.espalier.science.growth.Maturity;
import org.espalier.science.quantity.Age;
import org.espalier.treatment.PhysisKey;
import org.espalier.treatment.PlateSide;
import org.espalier.treatment.Treatment;

/** What was foretold of a child's plates, with the facts that tell what came. */
public final class KeptForecasts {

    private final ChildFacts facts;
    private final List<KeptForecast> forecasts;

    KeptForecasts(ChildFacts facts, List<KeptForecast> forecasts) {
        this.facts = facts;
        this.forecasts = List.copyOf(forecasts);
    }

    /** As they were given, the one that looks ahead from the earliest day first. */
    public List<KeptForecast> forecasts() {
        return forecasts;
    }

    public Treatment treatment() {
        return facts.treatment();
    }

    public Examination examination() {
        return facts.examination();
    }

    /** The films of the joint angle beside a physis, the earliest first; none of a physis that is not at the knee. */
    public List<FilmAngle> films(PhysisKey physis) {
        return Plates.site(physis)
                .map(site -> facts.films().of(physis.side(), Plates.angle(site)))
                .orElse(List.of());
    }

    /** Those of the knee, as science names them. */
    public static Optional<PhysisSite> site(PhysisKey physis) {
        return Plates.site(physis);
    }

    /** What a plate on a side of the bone corrects; empty for one that turns no knee in the frontal plane. */
    public static Optional<Deformity> corrects(PlateSide side) {
        return Plates.corrects(side);
    }

    /** The child's age on a day; empty before birth. */
    public Optional<Age> age(LocalDate day) {
        return day.isBefore(facts.birth()) ? Optional.empty() : Optional.of(Age.between(facts.birth(), day));
    }

    /** When growth at the knee was to end, reckoned by what is known of a day; empty when the sex is not known. */
    public Optional<Maturity> growthEnds(LocalDate day) {
        return facts.growthAge(day).map(Maturity::of);
    }
}
