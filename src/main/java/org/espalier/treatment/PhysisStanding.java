package org.espalier.treatment;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.espalier.science.quantity.Angle;

/**
 * Where one physis stands, and why.
 *
 * @param spans its states so far, the first first
 * @param target as signed; empty while the default holds
 * @param tethers all that ever held it, the first first
 * @param plans those that wait
 */
public record PhysisStanding(
        PhysisKey physis,
        List<StateSpan> spans,
        Optional<Target> target,
        List<Tether> tethers,
        List<StandingPlan> plans) {

    public PhysisStanding {
        spans = List.copyOf(spans);
        tethers = List.copyOf(tethers);
        plans = List.copyOf(plans);
    }

    public PhysisState state() {
        return spans.getLast().state();
    }

    /** Since when it stands so; empty while nothing has happened. */
    public Optional<LocalDate> since() {
        return spans.getLast().from();
    }

    public Why why() {
        return spans.getLast().why();
    }

    /** What it is guided to: as signed, else by default. */
    public Angle targetAngle() {
        return target.map(Target::angle).orElseGet(() -> Target.byDefault(physis));
    }

    public List<Tether> tethersIn() {
        return tethers.stream().filter(Tether::isIn).toList();
    }

    public boolean isListed() {
        return plans.stream().anyMatch(plan -> plan.plan().isListed());
    }
}
