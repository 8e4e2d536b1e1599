package org.espalier.treatment;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** One implant while its acts and findings are gone through, the first first. */
final class ImplantStory {

    private final Deed placed;
    private final PhysisKey physis;
    private final Set<Screw> out = EnumSet.noneOf(Screw.class);
    private final Set<ImplantFinding.Part> broken = EnumSet.noneOf(ImplantFinding.Part.class);
    private final List<ImplantFinding> findings = new ArrayList<>();
    private final List<TetherPeriod> periods = new ArrayList<>();
    private @Nullable PlateSide side;
    private LocalDate since;
    private Hold hold = Hold.HOLDS;
    private @Nullable LocalDate removed;

    ImplantStory(Deed placed, PhysisKey physis) {
        this.placed = placed;
        this.physis = physis;
        side = placed.act().plateSide();
        since = placed.on();
    }

    /** Goes on with an act; what does not fit is said and leaves everything as it was. */
    Optional<Misfit.Kind> take(LocalDate on, Act act) {
        var misfit = misfit(act);
        if (misfit.isEmpty()) {
            change(on, act);
        }
        return misfit;
    }

    Optional<Misfit.Kind> take(ImplantFinding finding) {
        boolean fragment = finding.seen() == ImplantFinding.Seen.FRAGMENT_RETAINED;
        if (removed != null && !fragment) {
            return Optional.of(Misfit.Kind.NOT_IN);
        }
        findings.add(finding);
        if (finding.seen() == ImplantFinding.Seen.BROKEN && removed == null) {
            broken.add(finding.part());
            holdFrom(finding.on(), side);
        }
        return Optional.empty();
    }

    PhysisKey physis() {
        return physis;
    }

    Tether toTether() {
        var all = new ArrayList<>(periods);
        if (removed == null) {
            all.add(new TetherPeriod(since, Optional.empty(), hold, Optional.ofNullable(side)));
        }
        var act = placed.act();
        return new Tether(
                Optional.ofNullable(act.implant()),
                act.kind(),
                physis,
                Optional.ofNullable(side),
                act.implants(),
                act.count(),
                placed.elsewhere(),
                placed.on(),
                Optional.ofNullable(removed),
                all,
                findings);
    }

    private Optional<Misfit.Kind> misfit(Act act) {
        var kind = act.kind();
        boolean moves = kind.effect() == ProcedureKind.Effect.MOVES;
        if (removed != null) {
            return Optional.of(Misfit.Kind.NOT_IN);
        }
        if (kind.placing() != placed.act().kind()) {
            return Optional.of(Misfit.Kind.ANOTHER_IMPLANT);
        }
        if (act.physis().filter(physis::equals).isEmpty() || !moves && act.plateSide() != side) {
            return Optional.of(Misfit.Kind.ANOTHER_PLACE);
        }
        return switch (kind.effect()) {
            case SCREW_OUT, SCREW_IN_PLACE ->
                out.contains(kind.screw()) ? Optional.of(Misfit.Kind.SCREW_OUT_ALREADY) : Optional.empty();
            case SCREW_IN -> out.contains(kind.screw()) ? Optional.empty() : Optional.of(Misfit.Kind.SCREW_IN_ALREADY);
            default -> Optional.empty();
        };
    }

    private void change(LocalDate on, Act act) {
        var kind = act.kind();
        switch (kind.effect()) {
            case TAKES_OUT -> {
                close(on);
                removed = on;
            }
            case MOVES -> {
                out.clear();
                broken.clear();
                holdFrom(on, act.plateSide());
            }
            case SCREW_OUT -> {
                out.add(kind.screw());
                renew(on, kind.screw());
            }
            case SCREW_IN, SCREW_IN_PLACE -> {
                out.remove(kind.screw());
                renew(on, kind.screw());
            }
            default -> throw new IllegalStateException("not done to an implant: " + kind);
        }
    }

    private void renew(LocalDate on, Screw screw) {
        broken.remove(
                screw == Screw.METAPHYSEAL
                        ? ImplantFinding.Part.METAPHYSEAL_SCREW
                        : ImplantFinding.Part.EPIPHYSEAL_SCREW);
        holdFrom(on, side);
    }

    private void holdFrom(LocalDate on, @Nullable PlateSide where) {
        var now = holdNow();
        if (now != hold || where != side) {
            close(on);
            since = on;
            hold = now;
            side = where;
        }
    }

    /** What ended on the day it began leaves no period. */
    private void close(LocalDate on) {
        if (on.isAfter(since) || periods.isEmpty()) {
            periods.add(new TetherPeriod(since, Optional.of(on), hold, Optional.ofNullable(side)));
        }
    }

    private Hold holdNow() {
        if (!broken.isEmpty()) {
            return Hold.BROKEN;
        }
        if (out.size() == Screw.values().length) {
            return Hold.BOTH_SCREWS_OUT;
        }
        if (out.contains(Screw.METAPHYSEAL)) {
            return Hold.METAPHYSEAL_SCREW_OUT;
        }
        return out.isEmpty() ? Hold.HOLDS : Hold.EPIPHYSEAL_SCREW_OUT;
    }
}
