package org.espalier.prognosis;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.espalier.science.alignment.LengthDifference;
import org.espalier.science.alignment.Quantity;
import org.espalier.science.alignment.ReaderError;
import org.espalier.science.growth.DifferenceAtMaturity;
import org.espalier.science.growth.DifferenceAtMaturity.Legs;
import org.espalier.science.growth.GrowthAge;
import org.espalier.science.growth.GrowthMethod;
import org.espalier.science.growth.LengthAtMaturity;
import org.espalier.science.growth.LengthForAge.Bone;
import org.espalier.science.quantity.Length;
import org.espalier.science.quantity.Side;

/**
 * The difference of both legs now and when growth ends, by two ways of reckoning side by side. What tethers cost on the
 * way is not in it.
 *
 * @param on the day of the film
 * @param now right less left, femur and tibia together
 * @param byMultiplier by the multiplier of each length
 * @param byLengths by the 1964 lengths; empty outside 1 to 18 years
 */
public record LengthOutlook(
        LocalDate on, LengthDifference now, AtMaturity byMultiplier, Optional<AtMaturity> byLengths) {

    /**
     * Both legs at maturity by one way of reckoning.
     *
     * @param sinceBirth right less left, if it keeps its proportion
     * @param acquired the same, if the shorter leg goes on growing by the same part of the longer one's growth; empty
     *     without an earlier film, and where the legs grew too little between
     */
    public record AtMaturity(
            GrowthMethod method,
            Bones right,
            Bones left,
            DifferenceAtMaturity.Expected sinceBirth,
            Optional<DifferenceAtMaturity.Expected> acquired) {}

    /** Both bones of a leg at maturity. */
    public record Bones(LengthAtMaturity femur, LengthAtMaturity tibia) {

        private Length growth() {
            return femur.growth().plus(tibia.growth());
        }
    }

    /** Each way of reckoning that reaches the age. */
    public List<AtMaturity> ways() {
        return Stream.concat(byLengths.stream(), Stream.of(byMultiplier)).toList();
    }

    /** Both legs on one film. */
    private record Measured(LocalDate on, Length rightFemur, Length leftFemur, Length rightTibia, Length leftTibia) {

        private Length right() {
            return rightFemur.plus(rightTibia);
        }

        private Length left() {
            return leftFemur.plus(leftTibia);
        }

        private Legs legs(boolean rightLonger) {
            return rightLonger ? new Legs(right(), left()) : new Legs(left(), right());
        }
    }

    static Optional<LengthOutlook> of(ChildFacts facts) {
        List<Measured> films = films(facts.films());
        return films.isEmpty()
                ? Optional.empty()
                : facts.growthAge(films.getLast().on).map(age -> of(age, films.getFirst(), films.getLast()));
    }

    private static LengthOutlook of(GrowthAge age, Measured first, Measured last) {
        var femora = LengthDifference.ofFemora(last.rightFemur, last.leftFemur);
        var tibiae = LengthDifference.ofTibiae(last.rightTibia, last.leftTibia);
        var now = LengthDifference.ofBoth(femora, tibiae);
        var kept = DifferenceAtMaturity.sinceBirth(age.sex(), age.age(), now.difference(), now.halfWidth95());
        return new LengthOutlook(
                last.on,
                now,
                atMaturity(GrowthMethod.MULTIPLIER, bones(age, last), kept, first, last),
                sinceBirth(age, Bone.FEMUR, femora)
                        .flatMap(femur -> sinceBirth(age, Bone.TIBIA, tibiae).map(femur::plus))
                        .flatMap(byLengths -> bonesByLengths(age, last)
                                .map(bones -> atMaturity(GrowthMethod.LENGTHS_BY_AGE, bones, byLengths, first, last))));
    }

    private static Optional<DifferenceAtMaturity.Expected> sinceBirth(
            GrowthAge age, Bone bone, LengthDifference difference) {
        return DifferenceAtMaturity.sinceBirth(
                bone, age.sex(), age.age(), difference.difference(), difference.halfWidth95());
    }

    /** Both legs, the right first. */
    private record Legged(Bones right, Bones left) {}

    private static Legged bones(GrowthAge age, Measured film) {
        return new Legged(
                new Bones(grown(age, film.rightFemur), grown(age, film.rightTibia)),
                new Bones(grown(age, film.leftFemur), grown(age, film.leftTibia)));
    }

    private static LengthAtMaturity grown(GrowthAge age, Length now) {
        return LengthAtMaturity.byMultiplier(age.sex(), age.age(), now);
    }

    private static Optional<Legged> bonesByLengths(GrowthAge age, Measured film) {
        return byLengths(age, film.rightFemur, film.rightTibia)
                .flatMap(right -> byLengths(age, film.leftFemur, film.leftTibia).map(left -> new Legged(right, left)));
    }

    private static Optional<Bones> byLengths(GrowthAge age, Length femur, Length tibia) {
        return LengthAtMaturity.byLengths(Bone.FEMUR, age.sex(), age.age(), femur)
                .flatMap(upper -> LengthAtMaturity.byLengths(Bone.TIBIA, age.sex(), age.age(), tibia)
                        .map(lower -> new Bones(upper, lower)));
    }

    private static AtMaturity atMaturity(
            GrowthMethod method,
            Legged bones,
            DifferenceAtMaturity.Expected sinceBirth,
            Measured first,
            Measured last) {
        boolean rightLonger = last.right().compareTo(last.left()) >= 0;
        var growth = (rightLonger ? bones.right : bones.left).growth();
        var acquired = first.on.equals(last.on)
                ? Optional.<DifferenceAtMaturity.Expected>empty()
                : acquired(growth, rightLonger, first, last);
        return new AtMaturity(method, bones.right, bones.left, sinceBirth, acquired);
    }

    private static Optional<DifferenceAtMaturity.Expected> acquired(
            Length growth, boolean rightLonger, Measured first, Measured last) {
        return switch (DifferenceAtMaturity.acquired(
                growth, first.legs(rightLonger), last.legs(rightLonger), oneLeg())) {
            case DifferenceAtMaturity.Expected expected -> Optional.of(rightLonger ? expected : expected.negated());
            case DifferenceAtMaturity.Unknown none -> Optional.empty();
        };
    }

    private static Length oneLeg() {
        return new Length(Math.hypot(
                ReaderError.halfWidth95(Quantity.FEMUR_LENGTH).orElseThrow(),
                ReaderError.halfWidth95(Quantity.TIBIA_LENGTH).orElseThrow()));
    }

    private static List<Measured> films(FilmNumbers numbers) {
        return numbers.of(Side.RIGHT, Quantity.FEMUR_LENGTH).stream()
                .flatMap(film -> measured(numbers, film).stream())
                .toList();
    }

    private static Optional<Measured> measured(FilmNumbers numbers, FilmAngle rightFemur) {
        var on = rightFemur.on();
        return at(numbers, on, Side.LEFT, Quantity.FEMUR_LENGTH)
                .flatMap(leftFemur -> at(numbers, on, Side.RIGHT, Quantity.TIBIA_LENGTH)
                        .flatMap(rightTibia -> at(numbers, on, Side.LEFT, Quantity.TIBIA_LENGTH)
                                .map(leftTibia -> new Measured(
                                        on, new Length(rightFemur.value()), leftFemur, rightTibia, leftTibia))));
    }

    private static Optional<Length> at(FilmNumbers numbers, LocalDate on, Side side, Quantity quantity) {
        return numbers.of(side, quantity).stream()
                .filter(film -> film.on().equals(on))
                .findFirst()
                .map(film -> new Length(film.value()));
    }
}
