package org.espalier.stock;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** What expires unused: operations go on as in the last year, and always take what expires first. */
final class LeftOver {

    private static final long YEAR_DAYS = 365;

    private final LocalDate today;
    private final Map<ProductId, Long> taken = new HashMap<>();

    private LeftOver(LocalDate today) {
        this.today = today;
    }

    /**
     * Says of each line how much is left on its last day.
     *
     * @param lines the first to expire first
     */
    static List<Expiring> of(List<Expiring> lines, LocalDate today) {
        var leftOver = new LeftOver(today);
        return lines.stream().map(leftOver::reckon).toList();
    }

    private Expiring reckon(Expiring line) {
        var last = line.lot().expires();
        long days = last == null ? 0 : Math.max(0, ChronoUnit.DAYS.between(today, last));
        long wanted = line.usedInAYear() * days / YEAR_DAYS
                - taken.getOrDefault(line.product().id(), 0L);
        int used = (int) Math.clamp(wanted, 0, line.quantity());
        taken.merge(line.product().id(), (long) used, Long::sum);
        return new Expiring(
                line.shelf(),
                line.product(),
                line.lot(),
                line.quantity(),
                line.cost(),
                line.usedInAYear(),
                line.quantity() - used);
    }
}
