package org.espalier.outcomes;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.espalier.access.SiteId;
import org.espalier.cost.DiagnosisGroup;
import org.espalier.patient.Diagnosis;
import org.espalier.prognosis.KeptForecast;
import org.espalier.prognosis.KeptForecasts;
import org.espalier.treatment.Act;
import org.espalier.treatment.Hold;
import org.espalier.treatment.PhysisKey;
import org.espalier.treatment.Procedure;
import org.espalier.treatment.ProcedureKind;
import org.espalier.treatment.Tether;
import org.espalier.treatment.TetherPeriod;
import org.espalier.treatment.Treatment;

/** Tells from a child's record what came of each growth plate that was held. */
final class PlateReader {

    private static final double DAYS_OF_A_YEAR = 365.25;

    /** What brings a child back to theatre that nobody plans when a plate goes in. */
    private static final Set<ProcedureKind> UNPLANNED = Set.of(
            ProcedureKind.METAPHYSEAL_SCREW_EXCHANGED,
            ProcedureKind.EPIPHYSEAL_SCREW_EXCHANGED,
            ProcedureKind.PLATE_MOVED,
            ProcedureKind.BROKEN_SCREW_RETRIEVED,
            ProcedureKind.WASHOUT,
            ProcedureKind.MANIPULATION);

    private final KeptForecasts facts;
    private final Treatment treatment;
    private final SiteId site;
    private final List<Tether> tethers;

    private PlateReader(KeptForecasts facts, SiteId site) {
        this.facts = facts;
        this.site = site;
        treatment = facts.treatment();
        tethers = treatment.tethers().stream()
                .filter(tether -> !tether.isPermanent() && tether.placed().putsIn())
                .toList();
    }

    /** One of each growth plate and day on which something was placed there. */
    static List<PlateCourse> of(KeptForecasts facts, SiteId site) {
        var reader = new PlateReader(facts, site);
        return reader.tethers.stream()
                .filter(tether -> reader.first(tether).filter(tether::equals).isPresent())
                .map(reader::course)
                .sorted(PlateCourse.FIRST)
                .toList();
    }

    /** Of several placed on one growth plate on one day the first stands for all. */
    private Optional<Tether> first(Tether tether) {
        return tethers.stream()
                .filter(other ->
                        other.physis().equals(tether.physis()) && other.from().equals(tether.from()))
                .findFirst();
    }

    private PlateCourse course(Tether tether) {
        var angles = PlateAngles.of(facts, tether);
        var end = TetherEnd.of(treatment, tether);
        var past = end.flatMap(one -> angles.flatMap(films -> films.pastBefore(one.on())));
        var to = end.map(TetherEnd::on).orElseGet(() -> followedTo(tether));
        var never = never(tether);
        var drift = angles.map(films ->
                        films.drift(end.filter(one -> one.by() == TetherEnd.By.RELEASED), held(tether.physis())))
                .orElse(PlateAngles.Drift.NOT_DUE);
        return new PlateCourse(
                treatment.child(),
                tether.physis(),
                tether.from(),
                leftOut(tether, angles.isPresent()),
                end.map(one -> came(one, past)),
                to,
                past.map(OptionalDouble::of).orElseGet(OptionalDouble::empty),
                drift.after(),
                drift.degrees(),
                hasComplication(tether),
                cameBack(tether),
                mix(tether),
                never.map(one -> OptionalDouble.of(one.never())).orElseGet(OptionalDouble::empty),
                angles.flatMap(films -> films.reached(to)));
    }

    private static Came came(TetherEnd end, Optional<Double> past) {
        return end.by() == TetherEnd.By.FAILED
                ? Came.FAILED
                : past.map(degrees -> Came.standing(degrees, end.by() == TetherEnd.By.CLOSED))
                        .orElse(Came.NOT_FILMED);
    }

    private Optional<LeftOut> leftOut(Tether tether, boolean frontal) {
        boolean here = treatment.standing().stream()
                .filter(procedure -> puts(procedure, tether))
                .allMatch(procedure -> procedure.site().equals(site));
        if (tether.elsewhere() || !here) {
            return Optional.of(LeftOut.ELSEWHERE);
        }
        return frontal ? Optional.empty() : Optional.of(LeftOut.NOT_FRONTAL);
    }

    private static boolean puts(Procedure procedure, Tether tether) {
        return acts(procedure)
                .anyMatch(act -> act.kind().putsIn() && tether.implant().equals(Optional.ofNullable(act.implant())));
    }

    /** While it runs it is followed to today, or to the day care of the limb ended. */
    private LocalDate followedTo(Tether tether) {
        var today = treatment.today();
        var limb = treatment.limb(tether.physis().side());
        return limb.isInCare()
                ? today
                : limb.conditions().values().stream()
                        .filter(day -> !day.isBefore(tether.from()))
                        .max(Comparator.naturalOrder())
                        .orElse(today);
    }

    /** The days from which something held a growth plate, anew or again. */
    private List<LocalDate> held(PhysisKey physis) {
        return tethers.stream()
                .filter(tether -> tether.physis().equals(physis))
                .flatMap(tether -> tether.periods().stream())
                .filter(period -> period.hold() == Hold.HOLDS)
                .map(TetherPeriod::from)
                .toList();
    }

    /** The forecast that looked ahead first. */
    private Optional<KeptForecast> never(Tether tether) {
        return facts.forecasts().stream()
                .filter(one ->
                        one.physis().equals(tether.physis()) && one.plateOn().equals(tether.from()))
                .findFirst();
    }

    private boolean hasComplication(Tether tether) {
        return treatment.complications().facts().stream()
                .anyMatch(one -> latest(one.on(), other -> one.side() == null || one.side() == other.side())
                        .filter(tether::equals)
                        .isPresent());
    }

    private boolean cameBack(Tether tether) {
        return treatment.standing().stream().anyMatch(procedure -> acts(procedure)
                .filter(act -> UNPLANNED.contains(act.kind()))
                .anyMatch(act -> latest(procedure.on(), physis -> isAbout(act, physis))
                        .filter(tether::equals)
                        .isPresent()));
    }

    private static boolean isAbout(Act act, PhysisKey physis) {
        return act.physis().map(physis::equals).orElse(act.side() == physis.side());
    }

    /** The last that was placed up to a day, where it may have been about. */
    private Optional<Tether> latest(LocalDate day, Predicate<PhysisKey> where) {
        return tethers.stream()
                .filter(tether -> !tether.from().isAfter(day) && where.test(tether.physis()))
                .reduce((one, other) -> other.from().isAfter(one.from()) ? other : one);
    }

    private PlateCourse.CaseMix mix(Tether tether) {
        var diagnosis = facts.examination().diagnoses().latest().map(Diagnosis::kind);
        var growth = facts.growthEnds(tether.from())
                .map(end -> Math.max(0, end.day().toEpochDay() - tether.from().toEpochDay()) / DAYS_OF_A_YEAR);
        return new PlateCourse.CaseMix(
                DiagnosisGroup.of(diagnosis),
                facts.age(tether.from()).map(age -> age.years()).orElse(0),
                growth.map(OptionalDouble::of).orElseGet(OptionalDouble::empty));
    }

    private static Stream<Act> acts(Procedure procedure) {
        return procedure.data().stream().flatMap(data -> data.acts().stream());
    }
}
