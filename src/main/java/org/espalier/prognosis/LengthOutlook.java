package org.espalier.prognosis;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.espalier.science.alignment.LengthDifference;
import org.espalier.science.alignment.Quantity;
import org.espalier.science.alignment.ReaderError;
import org.espalier.science.growth.DifferenceAtMaturity;
import org.espalier.science.growth.DifferenceAtMaturity.Legs;
import org.espalier.science.growth.GrowthAge;
import org.espalier.science.quantity.Length;
import org.espalier.science.quantity.Side;

/**
 * The difference of both legs now and when growth ends. What tethers cost on the way is not in it.
 *
 * @param on the day of the film
 * @param now right less left, femur and tibia together
 * @param sinceBirth at maturity if it keeps its proportion
 * @param acquired at maturity if the shorter leg goes on growing by the same part of the longer one's growth; empty
 *     without an earlier film, and where the legs grew too little between
 */
public record LengthOutlook(
        LocalDate on,
        LengthDifference now,
        DifferenceAtMaturity.Expected sinceBirth,
        Optional<DifferenceAtMaturity.Expected> acquired) {

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
        var now = LengthDifference.ofBoth(
                LengthDifference.ofFemora(last.rightFemur, last.leftFemur),
                LengthDifference.ofTibiae(last.rightTibia, last.leftTibia));
        return new LengthOutlook(
                last.on,
                now,
                DifferenceAtMaturity.sinceBirth(age.sex(), age.age(), now.difference(), now.halfWidth95()),
                first.on.equals(last.on) ? Optional.empty() : acquired(age, first, last));
    }

    private static Optional<DifferenceAtMaturity.Expected> acquired(GrowthAge age, Measured first, Measured last) {
        boolean rightLonger = last.right().compareTo(last.left()) >= 0;
        var outlook = DifferenceAtMaturity.acquired(
                age.sex(), age.age(), first.legs(rightLonger), last.legs(rightLonger), oneLeg());
        return switch (outlook) {
            case DifferenceAtMaturity.Expected expected ->
                Optional.of(
                        rightLonger
                                ? expected
                                : new DifferenceAtMaturity.Expected(
                                        new Length(-expected.difference().millimetres()), expected.halfWidth95()));
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
