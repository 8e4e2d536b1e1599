package org.espalier.prognosis;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.Objects;
import java.util.Optional;
import org.espalier.kit.Who;
import org.espalier.patient.BodySize;
import org.espalier.patient.BoneAge;
import org.espalier.patient.Child;
import org.espalier.patient.Examination;
import org.espalier.patient.Fact;
import org.espalier.science.growth.BmiReference;
import org.espalier.science.growth.GrowthAge;
import org.espalier.science.growth.SkeletalAge;
import org.espalier.science.growth.Standing;
import org.espalier.science.quantity.Age;
import org.espalier.science.quantity.Sex;
import org.espalier.treatment.Treatment;

/**
 * What is on record about a child, as far as it bears on where the limbs are going.
 *
 * @param today by the site's zone
 */
record ChildFacts(Child child, LocalDate today, Examination examination, Treatment treatment, FilmNumbers films) {

    /** A bone age read so long after a day still speaks of it. */
    private static final int MONTHS_AFTER = 6;

    /** The day of birth; for a reader who may not know it, the first of the month. */
    LocalDate birth() {
        return switch (child.who()) {
            case Who.Named named -> named.birthDate();
            case Who.Initialled initialled -> initialled.birthMonth().atDay(1);
        };
    }

    Optional<Sex> sex() {
        return Optional.ofNullable(child.who().sex());
    }

    /** The age growth is reckoned by on a day; empty when the sex is not known, and before birth. */
    Optional<GrowthAge> growthAge(LocalDate day) {
        return day.isBefore(birth())
                ? Optional.empty()
                : sex().map(sex -> GrowthAge.of(sex, birth(), day, boneAge(day), bodyMass(sex, day)));
    }

    private Optional<SkeletalAge> boneAge(LocalDate day) {
        return examination.boneAges().standing().stream()
                .filter(fact -> !fact.on().isAfter(day.plusMonths(MONTHS_AFTER)))
                .map(Fact::finding)
                .filter(Objects::nonNull)
                .max(Comparator.comparing(BoneAge::on))
                .map(read -> new SkeletalAge(read.on(), read.age()));
    }

    private Optional<Standing> bodyMass(Sex sex, LocalDate day) {
        return examination.sizes().standing().stream()
                .map(Fact::finding)
                .filter(Objects::nonNull)
                .filter(size -> !size.on().isAfter(day) && !size.on().isBefore(birth()))
                .filter(size -> size.index().isPresent())
                .max(Comparator.comparing(BodySize::on))
                .flatMap(size -> BmiReference.standing(
                        sex, Age.between(birth(), size.on()), size.index().orElseThrow()));
    }
}
