package org.espalier.patient;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.espalier.science.growth.BmiReference;
import org.espalier.science.quantity.Age;
import org.espalier.science.quantity.Sex;
import org.jspecify.annotations.Nullable;

/**
 * Heavy children run ahead in bone age: over the 95th centile of body mass index from 10 years on, a bone age not older
 * than six months is asked for before any date is reckoned from growth. Such children are asked about their sleep from
 * 9 years on (of 18 with tibia vara from 9 years, 11 had apnoea; J Bone Joint Surg Br 2006;88). The twelve months for
 * which height and weight hold are chosen here.
 *
 * @param sex null when not known; then the child counts as heavy when heavy by either table
 */
public record HeavyChildRule(LocalDate birth, @Nullable Sex sex) {

    private static final double CENTILE = 95;
    private static final Age BONE_AGE_FROM = Age.ofYears(10);
    private static final Age SLEEP_FROM = Age.ofYears(9);
    private static final int BONE_AGE_MONTHS = 6;
    private static final int SIZE_MONTHS = 12;

    /** Whether the child stood above the 95th centile when measured; empty when the size does not tell. */
    public Optional<Boolean> isHeavy(BodySize size) {
        var sexes = sex == null ? Arrays.asList(Sex.values()) : List.of(sex);
        return size.index().flatMap(index -> sexes.stream()
                .flatMap(one -> BmiReference.standing(one, Age.between(birth, size.on()), index).stream())
                .map(standing -> standing.centile() > CENTILE)
                .reduce(Boolean::logicalOr));
    }

    /** Whether the family is asked about the child's sleep. */
    public boolean asksForSleep(BodySize size) {
        return Age.between(birth, size.on()).compareTo(SLEEP_FROM) >= 0
                && isHeavy(size).orElse(false);
    }

    /** Whether a bone age is to be read first, and why; empty when none is. */
    public Optional<BoneAgeNeed> boneAgeNeed(History<BodySize> sizes, History<BoneAge> boneAges, LocalDate today) {
        var age = Age.between(birth, today);
        if (age.compareTo(BONE_AGE_FROM) < 0 || age.compareTo(BmiReference.TO) > 0) {
            return Optional.empty();
        }
        var heavy = lastKnown(sizes, today);
        if (heavy.isEmpty()) {
            return Optional.of(BoneAgeNeed.SIZE_UNKNOWN);
        }
        return heavy.get() ? boneAgeNeed(boneAges, today) : Optional.empty();
    }

    private Optional<Boolean> lastKnown(History<BodySize> sizes, LocalDate today) {
        var oldest = today.minusMonths(SIZE_MONTHS);
        return sizes.findings().stream()
                .filter(size -> !size.on().isBefore(oldest))
                .sorted(Comparator.comparing(BodySize::on).reversed())
                .flatMap(size -> isHeavy(size).stream())
                .findFirst();
    }

    private static Optional<BoneAgeNeed> boneAgeNeed(History<BoneAge> boneAges, LocalDate today) {
        var last = boneAges.latest().map(BoneAge::on);
        if (last.isEmpty()) {
            return Optional.of(BoneAgeNeed.MISSING);
        }
        boolean old = last.get().isBefore(today.minusMonths(BONE_AGE_MONTHS));
        return old ? Optional.of(BoneAgeNeed.OLD) : Optional.empty();
    }
}
