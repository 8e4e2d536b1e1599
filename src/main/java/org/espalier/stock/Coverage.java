package org.espalier.stock;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Which planned operation would be left short: the pieces there are, given out day by day, the needs with the least choice
 * first. It promises nothing to anybody; the shelf decides on the day.
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
        Map<Supply, Integer> left = new HashMap<>();
        supplies.forEach(supply -> left.merge(supply, supply.quantity(), Integer::sum));
        var met = new ArrayList<Met>();
        reservations.stream()
                .sorted(Comparator.comparing(Reservation::neededOn))
                .forEach(reservation -> reservation.needs().stream()
                        .sorted(Comparator.comparing(need -> choice(need, supplies)))
                        .forEach(need -> met.add(new Met(reservation, need, missing(reservation, need, left)))));
        return met;
    }

    private static long choice(Need need, List<Supply> supplies) {
        return supplies.stream()
                .filter(supply -> need.isMetBy(supply.product()))
                .mapToInt(Supply::quantity)
                .sum();
    }

    private static int missing(Reservation reservation, Need need, Map<Supply, Integer> left) {
        int missing = need.quantity();
        var usable = left.keySet().stream()
                .filter(supply -> need.isMetBy(supply.product()))
                .filter(supply -> !supply.until().isBefore(reservation.neededOn()))
                .sorted(Comparator.comparing(Supply::until)
                        .thenComparing(supply -> supply.product().id().value()))
                .toList();
        for (var supply : usable) {
            int taken = Math.min(missing, left.getOrDefault(supply, 0));
            left.merge(supply, -taken, Integer::sum);
            missing -= taken;
        }
        return missing;
    }
}
