package org.espalier.stock;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.espalier.access.SiteId;
import org.junit.jupiter.api.Test;

/** What expires unused, worked by hand. */
class LeftOverTests {

    private static final LocalDate TODAY = LocalDate.of(2027, 3, 1);
    private static final Product SCREW =
            new Product(new ProductId(UUID.randomUUID()), 1, ProductData.of(ProductKind.SCREW, "Invented", "S"));
    private static final Shelf STORE = new Shelf(
            new ShelfId(UUID.randomUUID()),
            new SiteId(UUID.randomUUID()),
            ShelfKind.STORE,
            "Store",
            1,
            null,
            null,
            null,
            false,
            null,
            null);

    @Test
    void takesWhatExpiresFirstAndThenTheNext() {
        // 36 a year are 3.6 in 36.5 days: 3 by day 40, 8 by day 90
        assertThat(leftOver(line(40, 2, 36), line(90, 10, 36))).containsExactly(0, 4);
        assertThat(leftOver(line(40, 6, 36), line(90, 10, 36))).containsExactly(3, 5);
    }

    @Test
    void leavesAllOfWhatIsPastAndOfWhatNobodyUses() {
        assertThat(leftOver(line(-5, 4, 365), line(0, 3, 365), line(100, 7, 0))).containsExactly(4, 3, 7);
    }

    private static List<Integer> leftOver(Expiring... lines) {
        return LeftOver.of(Arrays.asList(lines), TODAY).stream()
                .map(Expiring::leftOver)
                .toList();
    }

    private static Expiring line(int days, int quantity, int usedInAYear) {
        var lot = new Lot(new LotId(UUID.randomUUID()), SCREW.id(), "L" + days, TODAY.plusDays(days), false);
        return new Expiring(STORE, SCREW, lot, quantity, Optional.empty(), usedInAYear, quantity);
    }
}
