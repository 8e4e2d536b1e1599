package org.espalier.stock;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.espalier.access.SiteId;
import org.espalier.science.quantity.Length;
import org.junit.jupiter.api.Test;

/** Pieces given out by hand beside those given out by the rule. */
class CoverageTests {

    private static final LocalDate MONDAY = LocalDate.of(2027, 3, 1);
    private static final SiteId SITE = new SiteId(UUID.randomUUID());
    private static final Product SHORT = screw(24);
    private static final Product LONG = screw(36);

    @Test
    void givesTheFirstOperationFirst() {
        var met = Coverage.of(
                List.of(operation(MONDAY.plusDays(1), range(20, 40, 4)), operation(MONDAY, range(20, 40, 4))),
                List.of(supply(SHORT, LocalDate.MAX, 5)));
        assertThat(met).extracting(one -> one.reservation().neededOn()).containsExactly(MONDAY, MONDAY.plusDays(1));
        assertThat(met).extracting(Coverage.Met::missing).containsExactly(0, 3);
    }

    @Test
    void givesWhoHasNoChoiceFirst() {
        var met = Coverage.of(
                List.of(operation(MONDAY, range(20, 40, 2), range(30, 40, 2))),
                List.of(supply(SHORT, LocalDate.MAX, 2), supply(LONG, LocalDate.MAX, 2)));
        assertThat(met).extracting(Coverage.Met::missing).containsExactly(0, 0);
    }

    @Test
    void givesWhatExpiresFirstAndNothingThatExpiresBeforeTheDay() {
        var met = Coverage.of(
                List.of(operation(MONDAY, range(20, 40, 1)), operation(MONDAY.plusDays(30), range(20, 40, 1))),
                List.of(
                        supply(SHORT, MONDAY.plusDays(40), 1),
                        supply(SHORT, MONDAY.plusDays(10), 1),
                        supply(SHORT, MONDAY.minusDays(1), 9)));
        assertThat(met).extracting(Coverage.Met::missing).containsExactly(0, 0);
    }

    @Test
    void meetsANeedByKindDiameterLengthAndDriver() {
        assertThat(range(24, 24, 1).isMetBy(SHORT)).isTrue();
        assertThat(range(25, 40, 1).isMetBy(SHORT)).isFalse();
        assertThat(new Need(ProductKind.PLATE, null, null, null, null, null, 1).isMetBy(SHORT))
                .isFalse();
        assertThat(new Need(ProductKind.SCREW, null, Length.ofMillimetres(3.5), null, null, null, 1).isMetBy(SHORT))
                .isFalse();
        assertThat(new Need(ProductKind.SCREW, null, null, null, null, "HEX 3.5", 1).isMetBy(SHORT))
                .isTrue();
        assertThat(Need.of(LONG, 1).isMetBy(SHORT)).isFalse();
        assertThatThrownBy(() -> range(40, 20, 1)).hasMessageContaining("40");
    }

    private static Product screw(double length) {
        return new Product(
                new ProductId(UUID.randomUUID()),
                1,
                new ProductData(
                        ProductKind.SCREW,
                        "Invented screw",
                        "S-" + length,
                        Length.ofMillimetres(4.5),
                        null,
                        Length.ofMillimetres(length),
                        Build.CANNULATED,
                        null,
                        "hex 3.5",
                        Magnet.SAFE,
                        true,
                        false));
    }

    private static Need range(double shortest, double longest, int quantity) {
        return new Need(
                ProductKind.SCREW,
                null,
                null,
                Length.ofMillimetres(shortest),
                Length.ofMillimetres(longest),
                null,
                quantity);
    }

    private static Reservation operation(LocalDate on, Need... needs) {
        return new Reservation(UUID.randomUUID(), SITE, UUID.randomUUID(), on, List.of(needs));
    }

    private static Coverage.Supply supply(Product product, LocalDate until, int quantity) {
        return new Coverage.Supply(product, until, quantity);
    }
}
