package org.espalier.outcomes;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.espalier.treatment.Hold;
import org.espalier.treatment.Maturity;
import org.espalier.treatment.ProcedureKind;
import org.espalier.treatment.Tether;
import org.espalier.treatment.TetherPeriod;
import org.espalier.treatment.Treatment;

/** The day on which something held a growth plate no longer as it was placed, and by what. */
record TetherEnd(By by, LocalDate on) {

    /** Why; of several on one day the first counts. */
    enum By {
        FAILED,
        CLOSED,
        RELEASED
    }

    private static final Set<ProcedureKind> EXCHANGES = Set.of(
            ProcedureKind.METAPHYSEAL_SCREW_EXCHANGED,
            ProcedureKind.EPIPHYSEAL_SCREW_EXCHANGED,
            ProcedureKind.PLATE_MOVED);

    /** Empty while it holds. */
    static Optional<TetherEnd> of(Treatment treatment, Tether tether) {
        return all(treatment, tether).min(Comparator.comparing(TetherEnd::on).thenComparing(TetherEnd::by));
    }

    /** Every day on which it ceased to hold as before; after one it may have held again. */
    static Stream<TetherEnd> all(Treatment treatment, Tether tether) {
        return Stream.of(failed(treatment, tether), closed(treatment, tether), released(tether))
                .flatMap(days -> days);
    }

    private static Stream<TetherEnd> failed(Treatment treatment, Tether tether) {
        var broken = tether.periods().stream()
                .filter(period -> period.hold() == Hold.BROKEN)
                .map(TetherPeriod::from);
        var exchanged = treatment.standing().stream()
                .filter(procedure -> procedure.data().stream()
                        .flatMap(data -> data.acts().stream())
                        .anyMatch(act -> EXCHANGES.contains(act.kind())
                                && tether.implant().equals(Optional.ofNullable(act.implant()))))
                .map(procedure -> procedure.on());
        var replaced = tether.to().stream().filter(day -> isReplaced(treatment.tethers(), tether, day));
        return Stream.of(broken, exchanged, replaced).flatMap(days -> days).map(day -> new TetherEnd(By.FAILED, day));
    }

    /** Another took its place on the day it came out. */
    private static boolean isReplaced(List<Tether> all, Tether tether, LocalDate day) {
        return all.stream()
                .anyMatch(other -> other.from().equals(day)
                        && other.physis().equals(tether.physis())
                        && other.side().equals(tether.side())
                        && !other.implant().equals(tether.implant()));
    }

    private static Stream<TetherEnd> closed(Treatment treatment, Tether tether) {
        return treatment.maturities().facts().stream()
                .filter(closed -> closed.physis().equals(tether.physis()))
                .map(Maturity::on)
                .filter(day -> !day.isBefore(tether.from()))
                .map(day -> new TetherEnd(By.CLOSED, day));
    }

    private static Stream<TetherEnd> released(Tether tether) {
        return Stream.concat(
                        tether.periods().stream()
                                .filter(period -> period.hold() != Hold.HOLDS && period.hold() != Hold.BROKEN)
                                .map(TetherPeriod::from),
                        tether.to().stream())
                .map(day -> new TetherEnd(By.RELEASED, day));
    }
}
