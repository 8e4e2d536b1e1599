package org.espalier.cost;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.espalier.cost.TestCost.number;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.UUID;
import org.espalier.access.SiteId;
import org.espalier.patient.ChildId;
import org.espalier.science.quantity.Side;
import org.espalier.treatment.ProcedureKind;
import org.hipparchus.stat.descriptive.rank.Percentile;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** What episodes and pathways cost, worked by hand. */
class EpisodeCostTests {

    private static final Currency EURO = Currency.getInstance("EUR");
    private static final SiteId SITE = new SiteId(new UUID(0, 1));
    private static final ChildId CHILD = new ChildId(new UUID(0, 2));
    private static final LocalDate PLAN = LocalDate.of(2024, 2, 1);
    private static final LocalDate END = LocalDate.of(2026, 6, 30);

    private static Episode episode(
            ChildId child, Side side, Pathway pathway, Optional<LocalDate> ended, double degrees, boolean onTarget) {
        return new Episode(
                child,
                side,
                PLAN,
                ended,
                pathway,
                2,
                false,
                DiagnosisGroup.IDIOPATHIC,
                9,
                OptionalDouble.of(degrees),
                Optional.of(onTarget));
    }

    private static Charge charge(ChildId child, @Nullable Side side, LocalDate on, String amount) {
        var priced = Pricing.priced(BigDecimal.ONE, new Pricing.Unit(number(amount), EURO), BigDecimal.ZERO);
        return charge(child, side, on, Optional.of(priced), false);
    }

    private static Charge charge(
            ChildId child, @Nullable Side side, LocalDate on, Optional<Priced> priced, boolean reversed) {
        var line = new ChargeLine(
                ChargeSource.VISIT,
                UUID.randomUUID(),
                ChargeRule.CAME,
                TariffItem.VISIT,
                side,
                on,
                on,
                BigDecimal.ONE,
                priced,
                Optional.empty(),
                Optional.empty());
        return new Charge(
                new ChargeId(UUID.randomUUID()),
                SITE,
                child,
                line,
                Optional.empty(),
                reversed,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Instant.EPOCH);
    }

    /**
     * Before the plan 80.00: nobody's. Right alone 500.00. Shared 85.01: 42.51 and 42.50. After the left ended: 90.00
     * right.
     */
    @Test
    void sharesWhatServedBothLimbsAmongThoseInCareOnTheDay() {
        var leftEnd = LocalDate.of(2025, 1, 31);
        var episodes = List.of(
                episode(CHILD, Side.RIGHT, Pathway.GUIDED_GROWTH, Optional.of(END), 9, true),
                episode(CHILD, Side.LEFT, Pathway.WATCH, Optional.of(leftEnd), 1, true));
        var charges = List.of(
                charge(CHILD, null, PLAN.minusDays(1), "80"),
                charge(CHILD, Side.RIGHT, PLAN, "500"),
                charge(CHILD, null, leftEnd, "85.01"),
                charge(CHILD, null, leftEnd.plusDays(1), "90"));
        var costs = EpisodeCost.of(episodes, charges);
        assertThat(costs.get(0).total().whole(EURO)).contains(Money.of("632.51", "EUR"));
        assertThat(costs.get(1).total().whole(EURO)).contains(Money.of("42.50", "EUR"));
    }

    @Test
    void whatWasTakenBackCountsNothingAndWhatHasNoPriceIsSaid() {
        var episodes = List.of(episode(CHILD, Side.RIGHT, Pathway.WATCH, Optional.empty(), 1, true));
        var priced = Pricing.priced(BigDecimal.ONE, new Pricing.Unit(number("7"), EURO), BigDecimal.ZERO);
        var charges = List.of(
                charge(CHILD, null, PLAN, Optional.of(priced), true),
                charge(CHILD, null, PLAN, Optional.empty(), false),
                charge(CHILD, null, PLAN, "12"));
        var total = EpisodeCost.of(episodes, charges).getFirst().total();
        assertThat(total.byCurrency()).containsEntry("EUR", Money.of("12", "EUR"));
        assertThat(total.unpriced()).isEqualTo(1);
        assertThat(total.whole(EURO)).as("not the whole of it").isEmpty();
    }

    /** 1, 2, 3, 4 and 10: quartiles 2 and 4, the middle 3. */
    @Test
    void spreadIsThatOfTheMiddleHalf() {
        var spread = Spread.of(List.of("10", "1", "4", "2", "3").stream()
                .map(amount -> Money.of(amount, "EUR"))
                .toList());
        assertThat(spread).isEqualTo(new Spread(5, Money.of("2", "EUR"), Money.of("3", "EUR"), Money.of("4", "EUR")));
    }

    /** Reference: Hipparchus, Percentile of type R-7; the tolerance is half a cent, for ours are rounded. */
    @Test
    void spreadAgreesWithAReferenceLibrary() {
        var random = new Random(7);
        for (int count = 1; count < 60; count++) {
            var amounts = new ArrayList<Money>();
            for (int at = 0; at < count; at++) {
                amounts.add(new Money(BigDecimal.valueOf(random.nextInt(1_000_000), 2), EURO));
            }
            var values = amounts.stream()
                    .mapToDouble(money -> money.amount().doubleValue())
                    .toArray();
            var reference = new Percentile().withEstimationType(Percentile.EstimationType.R_7);
            var spread = Spread.of(amounts);
            assertThat(spread.lower().amount().doubleValue()).isCloseTo(reference.evaluate(values, 25), within(0.0051));
            assertThat(spread.median().amount().doubleValue())
                    .isCloseTo(reference.evaluate(values, 50), within(0.0051));
            assertThat(spread.upper().amount().doubleValue()).isCloseTo(reference.evaluate(values, 75), within(0.0051));
        }
    }

    /**
     * Ten children at 1 000 to 1 900, five on target: 14 500 / 5 = 2 900 a limb, 14 500 / 100 degrees = 145 a degree.
     */
    @Test
    void perLimbOnTargetAndPerDegreeStandBesideHowManyReachedIt() {
        var report = PathwayReport.of(SITE, 2026, costs(10, 5));
        var line = report.lines().getFirst();
        assertThat(line.limbs()).isEqualTo(new Cell.Told(10));
        var figures = line.figures().orElseThrow();
        assertThat(figures.spread().median()).isEqualTo(Money.of("1450", "EUR"));
        assertThat(figures.target())
                .contains(new PathwayFigures.Reached(
                        10, 5, Optional.of(Money.of("2900", "EUR")), Optional.of(Money.of("145", "EUR"))));
    }

    @Test
    void ofFewerThanFiveChildrenNothingIsTold() {
        var line = PathwayReport.of(SITE, 2026, costs(4, 4)).lines().getFirst();
        assertThat(line.limbs()).isEqualTo(new Cell.Hidden());
        assertThat(line.figures()).isEmpty();
    }

    @Test
    void twoLimbsOfOneChildAreOneChild() {
        var costs = new ArrayList<>(costs(4, 4));
        costs.add(cost(child(0), Side.LEFT, "1000", true));
        assertThat(PathwayReport.of(SITE, 2026, costs).lines().getFirst().figures())
                .isEmpty();
    }

    @Test
    void howManyMissedTheirTargetIsNotToldOfFewerThanFive() {
        var figures =
                PathwayReport.of(SITE, 2026, costs(10, 9)).lines().getFirst().figures();
        assertThat(figures.orElseThrow().target()).isEmpty();
        assertThat(PathwayReport.of(SITE, 2026, costs(10, 10))
                        .lines()
                        .getFirst()
                        .figures()
                        .orElseThrow()
                        .target()
                        .orElseThrow()
                        .reached())
                .isEqualTo(10);
    }

    @Test
    void whatEndedInAnotherYearOrHasNoPriceIsNotCounted() {
        assertThat(PathwayReport.of(SITE, 2025, costs(10, 10)).lines()).isEmpty();
        var unpriced = new EpisodeCost(
                episode(CHILD, Side.RIGHT, Pathway.WATCH, Optional.of(END), 1, true),
                CostSum.of(Optional.empty()),
                java.util.Map.of());
        var report = PathwayReport.of(SITE, 2026, List.of(unpriced));
        assertThat(report.lines()).isEmpty();
        assertThat(report.leftOut()).isEqualTo(new Cell.Hidden());
    }

    private static List<EpisodeCost> costs(int children, int onTarget) {
        var costs = new ArrayList<EpisodeCost>();
        for (int number = 0; number < children; number++) {
            costs.add(cost(child(number), Side.RIGHT, String.valueOf(1000 + 100 * number), number < onTarget));
        }
        return costs;
    }

    private static EpisodeCost cost(ChildId child, Side side, String amount, boolean onTarget) {
        var episode = episode(child, side, Pathway.GUIDED_GROWTH, Optional.of(END), 10, onTarget);
        return EpisodeCost.of(List.of(episode), List.of(charge(child, side, PLAN, amount)))
                .getFirst();
    }

    private static ChildId child(int number) {
        return new ChildId(new UUID(5, number));
    }

    /**
     * Plate 45 min at 10 = 450.00, a visit 80, a film 40, implants in the middle 300. One plate with a day, two
     * without, one next year; three visits of which one is after the quarter, one film: 450 + 300 + 2 × 80 + 40 = 950;
     * and 1 500 more at most.
     */
    @Test
    void theNextQuarterIsWhatIsWrittenDownToday() {
        var from = LocalDate.of(2026, 4, 1);
        var tariffs = new TariffBook(List.of(
                TestCost.tariff(TariffItem.THEATRE_MINUTE, "10", PLAN),
                TestCost.tariff(TariffItem.VISIT, "80", PLAN),
                TestCost.tariff(TariffItem.FILM, "40", PLAN)));
        var agreed = new AllowanceBook(
                List.of(TestCost.allowance(ProcedureKind.PLATE_PLACED, TariffItem.THEATRE_MINUTE, "45")));
        var implants = Spread.of(List.of(Money.of("300", "EUR")));
        var expected = List.of(
                plate(Optional.of(from.plusDays(3))),
                plate(Optional.empty()),
                plate(Optional.empty()),
                plate(Optional.of(from.plusYears(1))),
                new Expected.Look(from.minusMonths(6), true),
                new Expected.Look(from.plusDays(90), false),
                new Expected.Look(from.plusDays(91), true));
        var budget = Budget.of(LocalDate.of(2026, 3, 31), expected, tariffs, agreed, Optional.of(implants));
        assertThat(budget.from()).isEqualTo(from);
        assertThat(budget.until()).isEqualTo(LocalDate.of(2026, 6, 30));
        assertThat(budget.range())
                .contains(new Budget.Range(Money.of("950", "EUR"), Money.of("1700", "EUR"), Money.of("2450", "EUR")));
        assertThat(budget.missing()).isEmpty();
    }

    @Test
    void aQuarterFollowsTheOneOfToday() {
        assertThat(List.of("2026-01-01", "2026-05-31", "2026-09-30", "2026-12-31"))
                .extracting(day -> Budget.nextQuarter(LocalDate.parse(day)))
                .containsExactly(
                        LocalDate.of(2026, 4, 1),
                        LocalDate.of(2026, 7, 1),
                        LocalDate.of(2026, 10, 1),
                        LocalDate.of(2027, 1, 1));
    }

    private static Expected plate(Optional<LocalDate> on) {
        return new Expected.Operation(ProcedureKind.PLATE_PLACED, true, on);
    }
}
