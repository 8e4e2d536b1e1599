package org.espalier.stock;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * Which planned operation would be left short: the pieces there are, given out day by day, the needs with the least
 * choice first. It promises nothing to anybody; the shelf decides on the day.
 */
public final class Coverage {

    private Coverage() {}

    /**
     * What a need gets.
     *
     * @param missing how many pieces there are too few
     */
    public record Met(Reservation reservation, Need need, int missing) {}

    /** What lies usable of a product until a day. */
    public record Supply(Product product, LocalDate until, int quantity) {}

    /** Gives the pieces out, the first operation first, and of what will do the first to expire first. */
    public static List<Met> of(List<Reservation> reservations, List<Supply> supplies) {
        var shelves = new Shelves(supplies);
        var met = new ArrayList<Met>();
        reservations.stream()
                .sorted(Comparator.comparing(Reservation::neededOn))
                .forEach(reservation -> reservation.needs().stream()
                        .sorted(Comparator.comparing(shelves::choice))
                        .forEach(need -> met.add(new Met(reservation, need, shelves.missing(reservation, need)))));
        return met;
    }

    /** What is left of each supply, the first to expire first; which of them meets a need is looked for once. */
    private static final class Shelves {

        private final List<Supply> supplies;
        private final int[] left;
        private final Map<Need, int[]> usable = new HashMap<>();

        Shelves(List<Supply> supplies) {
            this.supplies = supplies.stream()
                    .sorted(Comparator.comparing(Supply::until)
                            .thenComparing(supply -> supply.product().id().value()))
                    .toList();
            left = this.supplies.stream().mapToInt(Supply::quantity).toArray();
        }

        long choice(Need need) {
            return Arrays.stream(usable(need))
                    .mapToLong(place -> supplies.get(place).quantity())
                    .sum();
        }

        int missing(Reservation reservation, Need need) {
            int missing = need.quantity();
            for (int place : usable(need)) {
                if (missing > 0 && !supplies.get(place).until().isBefore(reservation.neededOn())) {
                    int taken = Math.min(missing, left[place]);
                    left[place] -= taken;
                    missing -= taken;
                }
            }
            return missing;
        }

        private int[] usable(Need need) {
            return usable.computeIfAbsent(need, wanted -> IntStream.range(0, supplies.size())
                    .filter(place -> wanted.isMetBy(supplies.get(place).product()))
                    .toArray());
        }
    }
}
