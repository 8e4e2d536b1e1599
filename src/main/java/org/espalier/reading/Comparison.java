package org.espalier.reading;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.espalier.film.Film;
import org.espalier.patient.Child;
import org.espalier.science.alignment.Quantity;
import org.espalier.science.quantity.Age;
import org.espalier.science.quantity.Calibration;
import org.espalier.science.quantity.PixelPoint;
import org.espalier.science.quantity.Side;

/**
 * Two films of one child side by side, the earlier first.
 *
 * @param films every film of the child that can be shown, the earliest first
 */
public record Comparison(Child child, LocalDate today, List<Film> films, Compared earlier, Compared later) {

    public Comparison {
        films = List.copyOf(films);
    }

    /**
     * One of both films.
     *
     * @param age of the child on the film; empty when its day is not known
     * @param limbs of each limb that was read, the latest reading that stands, right before left
     */
    public record Compared(Film film, Optional<Age> age, List<LimbRead> limbs) {

        public Compared {
            limbs = List.copyOf(limbs);
        }

        /** The scale the film is shown by: as it was read, else as it says itself. */
        public Calibration calibration() {
            return limbs.stream()
                    .map(limb -> limb.reading().calibration())
                    .filter(Calibration::isInMillimetres)
                    .findFirst()
                    .orElseGet(film::calibration);
        }

        /** Every landmark of every limb read, in the order they are set. */
        public List<Placed> landmarks() {
            return limbs.stream().flatMap(limb -> limb.landmarks().stream()).toList();
        }

        private Optional<LimbRead> limb(Side side) {
            return limbs.stream().filter(limb -> limb.side() == side).findFirst();
        }
    }

    /** One limb as it was read on a film. */
    public record LimbRead(Side side, Reading reading, List<Placed> landmarks) {

        private Optional<ReadNumber> number(Quantity quantity) {
            return reading.numbers().stream()
                    .filter(number -> number.side() == side && number.quantity() == quantity)
                    .findFirst();
        }
    }

    /** A landmark by its code and where it lies on the film. */
    public record Placed(Side side, String landmark, PixelPoint at) {}

    /**
     * One quantity of one limb on both films.
     *
     * @param change empty unless both films have it and were taken the same way, standing or lying
     */
    public record Row(
            Side side,
            Quantity quantity,
            Optional<ReadNumber> earlier,
            Optional<ReadNumber> later,
            Optional<Change> change) {}

    static Comparison of(Child child, LocalDate today, List<Film> films, Compared one, Compared other) {
        var byDay = Comparator.comparing(
                (Compared compared) -> compared.film().takenOn().orElse(LocalDate.MAX));
        var inOrder = Stream.of(one, other).sorted(byDay).toList();
        return new Comparison(child, today, films, inOrder.getFirst(), inOrder.getLast());
    }

    /** Whether both films can be shown at one scale. */
    public boolean isToScale() {
        return earlier.calibration().isInMillimetres() && later.calibration().isInMillimetres();
    }

    /** Whether both scales came about in the same way; else sizes may differ by magnification. */
    public boolean isScaledAlike() {
        return earlier.calibration().origin() == later.calibration().origin();
    }

    /** Whether one film was taken standing and the other lying, so that nothing is compared. */
    public boolean isOfTwoWays() {
        return supine(earlier).stream().anyMatch(way -> supine(later).contains(!way));
    }

    /** What was read on either film, right before left, each in listing order. */
    public List<Row> rows() {
        return Stream.of(Side.values())
                .flatMap(side -> Stream.of(Quantity.values()).map(quantity -> row(side, quantity)))
                .filter(row -> row.earlier().isPresent() || row.later().isPresent())
                .toList();
    }

    private Row row(Side side, Quantity quantity) {
        var before = earlier.limb(side);
        var after = later.limb(side);
        var then = before.flatMap(limb -> limb.number(quantity));
        var now = after.flatMap(limb -> limb.number(quantity));
        var change = then.flatMap(value -> now.flatMap(newer -> Change.between(
                side,
                quantity,
                value.value().orElseThrow(),
                before.orElseThrow().reading().taken(),
                newer.value().orElseThrow(),
                after.orElseThrow().reading().taken())));
        return new Row(side, quantity, then, now, change);
    }

    private static List<Boolean> supine(Compared compared) {
        return compared.limbs().stream()
                .map(limb -> limb.reading().taken().lay())
                .distinct()
                .toList();
    }
}
