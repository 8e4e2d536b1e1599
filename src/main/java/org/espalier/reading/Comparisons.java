package org.espalier.reading;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.espalier.kit.Texts;
import org.espalier.reading.MeasureAnswer.Comparison;
import org.espalier.science.alignment.LengthDifference;
import org.espalier.science.alignment.Quantity;
import org.espalier.science.quantity.Length;
import org.espalier.science.quantity.Side;

/** How right and left differ in length, each by the name of its definition, with the error of a difference. */
final class Comparisons {

    private final FilmMeasurement measurement;

    Comparisons(FilmMeasurement measurement) {
        this.measurement = measurement;
    }

    List<Comparison> all() {
        if (!measurement.comparesSides()) {
            return measurement.limbs().size() > 1
                    ? List.of(new Comparison(
                            Texts.text("reading.difference"), Texts.text("reading.difference.withheld"), null))
                    : List.of();
        }
        var femora = difference(Quantity.FEMUR_LENGTH).map(LengthPair::ofFemora);
        var tibiae = difference(Quantity.TIBIA_LENGTH).map(LengthPair::ofTibiae);
        var both = femora.flatMap(femur -> tibiae.map(tibia -> LengthDifference.ofBoth(femur, tibia)));
        return Stream.of(
                        femora.map(one -> mechanical("reading.difference.femora", one)),
                        tibiae.map(one -> mechanical("reading.difference.tibiae", one)),
                        both.map(one -> mechanical("reading.difference.both", one)),
                        radiographic(Quantity.FEMUR_FILM_LENGTH),
                        radiographic(Quantity.TIBIA_FILM_LENGTH),
                        radiographic(Quantity.LIMB_FILM_LENGTH))
                .flatMap(Optional::stream)
                .toList();
    }

    private record LengthPair(Length right, Length left) {
        LengthDifference ofFemora() {
            return LengthDifference.ofFemora(right, left);
        }

        LengthDifference ofTibiae() {
            return LengthDifference.ofTibiae(right, left);
        }
    }

    private static Comparison mechanical(String label, LengthDifference difference) {
        var error = Texts.text(
                "reading.error",
                NumberText.brief(Quantity.FEMUR_LENGTH, difference.halfWidth95().millimetres()));
        return new Comparison(
                Texts.text(label),
                words(difference.difference()),
                difference.isWithinError() ? Texts.text("reading.difference.within", error) : error);
    }

    /** No error of reading is published for these definitions. */
    private Optional<Comparison> radiographic(Quantity quantity) {
        return difference(quantity)
                .map(pair -> new Comparison(
                        NumberText.label(quantity),
                        words(pair.right().minus(pair.left())),
                        Texts.text("reading.difference.no-error")));
    }

    private static String words(Length rightLessLeft) {
        var size = NumberText.brief(Quantity.FEMUR_LENGTH, rightLessLeft.abs().millimetres());
        var longer = rightLessLeft.millimetres() >= 0 ? Side.RIGHT : Side.LEFT;
        return Texts.text("reading.difference.longer", Texts.of(longer), size);
    }

    private Optional<LengthPair> difference(Quantity quantity) {
        var right = value(Side.RIGHT, quantity);
        var left = value(Side.LEFT, quantity);
        return right.isPresent() && left.isPresent()
                ? Optional.of(new LengthPair(
                        Length.ofMillimetres(right.getAsDouble()), Length.ofMillimetres(left.getAsDouble())))
                : Optional.empty();
    }

    private OptionalDouble value(Side side, Quantity quantity) {
        return measurement.numbers().stream()
                .filter(number -> number.side() == side && number.quantity() == quantity)
                .findFirst()
                .map(ReadNumber::value)
                .orElse(OptionalDouble.empty());
    }
}
