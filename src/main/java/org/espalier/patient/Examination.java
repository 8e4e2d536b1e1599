package org.espalier.patient;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.espalier.science.quantity.Angle;
import org.espalier.science.quantity.Length;
import org.espalier.science.quantity.Side;

/**
 * All that was measured and found on a child.
 *
 * @param child empty when there is none that the reader may see
 */
public record Examination(
        Optional<Child> child,
        History<BodySize> sizes,
        History<BoneAge> boneAges,
        History<Diagnosis> diagnoses,
        History<ClinicalExamination> visits,
        History<LabResult> labs,
        History<BoneDisease> boneDisease,
        History<ImagingReport> imaging,
        History<TibiaVaraStage> stages) {

    /** An angle of one leg over time, such as torsion; the visits that did not record it are left out. */
    public List<Dated<Angle>> angles(Side side, LegAngle what) {
        return series(visit -> visit.leg(side).angle(what));
    }

    /** A sign of one leg over time, such as laxity or thrust; the visits that did not record it are left out. */
    public List<Dated<LegAnswer>> answers(Side side, LegSign sign) {
        return series(visit -> visit.leg(side).answer(sign));
    }

    /** The gap between the knees, ankles touching, over time. */
    public List<Dated<Length>> gapsOfKnees() {
        return series(ClinicalExamination::gapOfKnees);
    }

    /** The gap between the ankles, knees touching, over time. */
    public List<Dated<Length>> gapsOfAnkles() {
        return series(ClinicalExamination::gapOfAnkles);
    }

    /** Whether tibia vara of early onset is a diagnosis that stands: it alone has stages. */
    public boolean hasStages() {
        return diagnoses.findings().stream()
                .map(Diagnosis::onset)
                .anyMatch(onset -> onset == Onset.EARLY || onset == Onset.INFANTILE);
    }

    /** Whether a bone age is to be read before any date is reckoned from growth, and why. */
    public Optional<BoneAgeNeed> boneAgeNeed(LocalDate today) {
        return child.flatMap(Child::data)
                .flatMap(data -> new HeavyChildRule(data.birthDate(), data.sex()).boneAgeNeed(sizes, boneAges, today));
    }

    private <T> List<Dated<T>> series(Function<ClinicalExamination, Optional<T>> part) {
        return visits.findings().stream()
                .flatMap(visit -> part.apply(visit).map(value -> new Dated<>(visit.on(), value)).stream())
                .toList();
    }
}
