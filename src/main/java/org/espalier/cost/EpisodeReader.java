package org.espalier.cost;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.espalier.access.SiteService;
import org.espalier.followup.Visit;
import org.espalier.followup.VisitService;
import org.espalier.patient.AffectedSides;
import org.espalier.patient.ChildId;
import org.espalier.patient.Diagnosis;
import org.espalier.patient.ExaminationService;
import org.espalier.patient.PatientService;
import org.espalier.science.quantity.Side;
import org.espalier.treatment.CareStep;
import org.espalier.treatment.PhysisKey;
import org.espalier.treatment.PhysisStanding;
import org.espalier.treatment.PhysisState;
import org.espalier.treatment.Procedure;
import org.espalier.treatment.ProcedureKind;
import org.espalier.treatment.Target;
import org.espalier.treatment.Treatment;
import org.espalier.treatment.TreatmentService;
import org.springframework.stereotype.Component;

/** Tells the episodes of a child's limbs, and what is still to come, from the record. */
@Component
class EpisodeReader {

    private final TreatmentService treatments;
    private final VisitService visits;
    private final ExaminationService examinations;
    private final PatientService patients;
    private final SiteService sites;

    EpisodeReader(
            TreatmentService treatments,
            VisitService visits,
            ExaminationService examinations,
            PatientService patients,
            SiteService sites) {
        this.treatments = treatments;
        this.visits = visits;
        this.examinations = examinations;
        this.patients = patients;
        this.sites = sites;
    }

    /** One of each limb that is followed; a limb that is not the matter and to which nothing was done has none. */
    List<Episode> of(ChildId child) {
        var treatment = treatments.of(child);
        var diagnosis = examinations.of(child).diagnoses().latest();
        return Stream.of(Side.RIGHT, Side.LEFT)
                .map(side -> new LimbCare(treatment, side))
                .filter(care -> care.isTreated() || isAffected(diagnosis, care.side()))
                .flatMap(care -> episode(child, care, diagnosis).stream())
                .toList();
    }

    List<Expected> expected(ChildId child) {
        var operations = treatments.of(child).waiting().stream()
                .map(waiting -> waiting.plan())
                .map(plan ->
                        new Expected.Operation(plan.kind(), plan.isListed(), Optional.ofNullable(plan.theatreOn())));
        var looks = visits.of(child).open().stream()
                .map(visit -> new Expected.Look(visit.day(), visit.due().film()));
        return Stream.<Expected>concat(operations, looks).toList();
    }

    private Optional<Episode> episode(ChildId child, LimbCare care, Optional<Diagnosis> diagnosis) {
        return care.began().or(() -> firstVisit(child, care)).map(began -> {
            var ended = care.ended().map(day -> day.isBefore(began) ? began : day);
            var correction = new Correction(child, care, began, ended);
            return new Episode(
                    child,
                    care.side(),
                    began,
                    ended,
                    Pathway.of(care.kinds()),
                    care.operations(),
                    care.isPartlyElsewhere(),
                    DiagnosisGroup.of(diagnosis.map(Diagnosis::kind)),
                    patients.ageOn(child, began).map(age -> age.years()).orElse(0),
                    correction.degrees(),
                    correction.onTarget());
        });
    }

    private Optional<LocalDate> firstVisit(ChildId child, LimbCare care) {
        var zone = sites.get(care.treatment().site()).zone();
        return visits.of(child).all().stream()
                .map(Visit::openedAt)
                .min(Comparator.naturalOrder())
                .map(at -> LocalDate.ofInstant(at, zone));
    }

    private static boolean isAffected(Optional<Diagnosis> diagnosis, Side side) {
        return diagnosis
                .map(Diagnosis::sides)
                .filter(sides -> sides == AffectedSides.BOTH || sides.name().equals(side.name()))
                .isPresent();
    }

    /** How the growth plates at a knee stood at the beginning, and how they stand at the end or today. */
    private final class Correction {

        private final List<Gap> gaps;

        private record Gap(double before, Optional<Double> after) {}

        Correction(ChildId child, LimbCare care, LocalDate began, Optional<LocalDate> ended) {
            var end = ended.orElse(care.treatment().today());
            gaps = PhysisKey.ofKnee(care.side()).stream()
                    .flatMap(physis -> gap(child, care.treatment(), physis, began)
                            .map(before -> new Gap(before, gap(child, care.treatment(), physis, end)))
                            .stream())
                    .toList();
        }

        OptionalDouble degrees() {
            return gaps.isEmpty()
                    ? OptionalDouble.empty()
                    : OptionalDouble.of(Math.max(
                            0,
                            gaps.stream()
                                    .mapToDouble(
                                            gap -> gap.before() - gap.after().orElse(0.0))
                                    .sum()));
        }

        Optional<Boolean> onTarget() {
            return gaps.isEmpty()
                    ? Optional.empty()
                    : Optional.of(gaps.stream().allMatch(gap -> gap.after().isEmpty()));
        }

        private Optional<Double> gap(ChildId child, Treatment treatment, PhysisKey physis, LocalDate day) {
            var target =
                    treatment.physis(physis).map(PhysisStanding::targetAngle).orElseGet(() -> Target.byDefault(physis));
            return treatments
                    .deformity(child, physis, day)
                    .map(measured -> measured.angle().minus(target).abs().degrees());
        }
    }

    /** What happened to one limb. */
    private record LimbCare(Treatment treatment, Side side) {

        boolean isTreated() {
            return began().isPresent();
        }

        Optional<LocalDate> began() {
            var planned = treatment.plans().stream()
                    .map(one -> one.plan())
                    .filter(plan -> plan.side() == side)
                    .map(plan -> plan.on());
            return Stream.concat(planned, done().map(one -> one.on())).min(Comparator.naturalOrder());
        }

        List<ProcedureKind> kinds() {
            return done().flatMap(one -> one.data().stream())
                    .flatMap(data -> data.acts().stream())
                    .filter(act -> act.side() == side)
                    .map(act -> act.kind())
                    .toList();
        }

        int operations() {
            return (int) done().flatMap(one -> one.data().stream())
                    .filter(data -> data.acts().stream()
                            .anyMatch(act -> act.side() == side && !act.kind().isOutsideTheatre()))
                    .count();
        }

        boolean isPartlyElsewhere() {
            return done().flatMap(one -> one.data().stream()).anyMatch(data -> data.elsewhere());
        }

        /** When care ended for a reason, or the last of its growth plates was seen closed. */
        Optional<LocalDate> ended() {
            if (treatment.limb(side).isInCare()) {
                return Optional.empty();
            }
            var steps = treatment.careSteps().facts().stream()
                    .filter(step -> step.step() == CareStep.Step.ENDED)
                    .filter(step -> step.side() == null || step.side() == side)
                    .map(CareStep::on);
            var closed = treatment.physes().stream()
                    .filter(one -> one.physis().side() == side && one.state() == PhysisState.MATURE)
                    .flatMap(one -> one.since().stream());
            return Stream.concat(steps, closed).max(Comparator.naturalOrder());
        }

        private Stream<Procedure> done() {
            return treatment.standing().stream().filter(one -> one.data()
                    .filter(data -> data.acts().stream().anyMatch(act -> act.side() == side))
                    .isPresent());
        }
    }
}
