package org.espalier.cost;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.espalier.cost.TestCost.LONG_AGO;
import static org.espalier.cost.TestCost.number;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.espalier.IntegrationTest;
import org.espalier.TestNetwork;
import org.espalier.access.SiteId;
import org.espalier.access.SiteService;
import org.espalier.film.FilmService;
import org.espalier.film.TestDoor.Sender;
import org.espalier.followup.Attempt;
import org.espalier.followup.AttemptOutcome;
import org.espalier.followup.Channel;
import org.espalier.followup.Happening;
import org.espalier.followup.RecallService;
import org.espalier.followup.TransferService;
import org.espalier.followup.VisitReason;
import org.espalier.followup.VisitService;
import org.espalier.patient.ChildId;
import org.espalier.patient.ExaminationService;
import org.espalier.patient.FactId;
import org.espalier.patient.ImagingReport;
import org.espalier.platform.Ids;
import org.espalier.reading.TestReader;
import org.espalier.stock.TestStock;
import org.espalier.stock.Use;
import org.espalier.stock.UseService;
import org.espalier.treatment.Act;
import org.espalier.treatment.MeasuredMinutes;
import org.espalier.treatment.PlateSide;
import org.espalier.treatment.ProcedureId;
import org.espalier.treatment.ProcedureKind;
import org.espalier.treatment.RecordOutcome;
import org.espalier.treatment.TestTreatment;
import org.espalier.treatment.TreatmentService;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.security.access.AccessDeniedException;

/** Charges over the real database: they come and go with what they follow from, and nothing is changed. */
@IntegrationTest
class ChargeIntegrationTests {

    @Autowired
    TestNetwork network;

    @Autowired
    TestReader reader;

    @Autowired
    TestCost costs;

    @Autowired
    TestStock stock;

    @Autowired
    TariffService tariffs;

    @Autowired
    ChargeService charges;

    @Autowired
    TreatmentService treatments;

    @Autowired
    VisitService visits;

    @Autowired
    RecallService recall;

    @Autowired
    TransferService transfers;

    @Autowired
    FilmService films;

    @Autowired
    ExaminationService examinations;

    @Autowired
    UseService uses;

    @Autowired
    SiteService sites;

    @Autowired
    Ids ids;

    Sender surgeon;
    SiteId site;
    ChildId child;
    UUID administrator;
    LocalDate today;

    @BeforeEach
    void aHospitalThatKnowsWhatThingsCost() {
        surgeon = reader.surgeon();
        site = surgeon.site();
        child = reader.child(surgeon, LocalDate.of(2016, 5, 20));
        administrator = costs.administrator(site);
        today = surgeon.does(() -> sites.today(site));
    }

    @Test
    void anOperationIsChargedWithItsRecordByWhatWasAgreed() {
        plate();
        assertThat(told())
                .containsExactlyInAnyOrder(
                        "THEATRE_MINUTE EACH_OPERATION 20.00 x 10.0000 = 200.00 + 25.00",
                        "THEATRE_MINUTE EACH_ACT 25.00 x 10.0000 = 250.00 + 31.25",
                        "ANAESTHESIA_MINUTE EACH_OPERATION 30.00 x 17.0000 = 510.00 + 63.75",
                        "BED_DAY LONGEST 1.00 x 24.0000 = 24.00 + 3.00",
                        "IMPLANT PIECES_COUNTED 3.00 x 94.0000 = 282.00 + 35.25");
    }

    @Test
    void whatTheStockTookIsChargedByItsLotEvenWhenTakenAfterTheRecord() {
        var here = stock.empty(site);
        var lot = stock.arrive(here, here.plate(), here.store(), "L1", LocalDate.of(2035, 1, 31), 5);
        var procedure = new ProcedureId(ids.next());
        network.as(surgeon.staff(), () -> {
            record(procedure);
            return uses.use(
                    new Use(ids.next(), here.store(), here.plate().id(), Optional.of(lot.id()), 2, procedure.value()));
        });
        assertThat(told())
                .contains("IMPLANT LOT_COST 2.00 x 10.0000 = 20.00 + 2.50")
                .noneMatch(line -> line.contains("PIECES_COUNTED"));
    }

    @Test
    void anOperationStaysWithTheHospitalThatRecordedItWhenTheChildMovesOn() {
        var procedure = plate();
        var before = told();
        var there = reader.surgeon();
        var administratorThere = costs.administrator(there.site());
        var asked = surgeon.does(() -> transfers.ask(child, there.site(), "the family moved"));
        there.does(() -> transfers.accept(asked.id()));
        var longer = TestTreatment.plate(today, TestTreatment.FEMUR, PlateSide.LATERAL, TestTreatment.implant())
                .withMeasured(new MeasuredMinutes(70, null));
        there.does(() -> treatments.correct(
                child, procedure, new ProcedureId(ids.next()), longer, "by the book of the other theatre"));
        costs.renew(there.site(), child);
        assertThat(told()).isEqualTo(before);
        assertThat(network.as(administratorThere, () -> charges.ofAccount(costs.account(there.staff(), child))))
                .noneMatch(charge -> charge.line().source() == ChargeSource.PROCEDURE);
    }

    @Test
    void aWithdrawnOperationLeavesItsChargesAndTheirReversals() {
        var procedure = plate();
        int charged = standing().size();
        surgeon.does(() -> treatments.withdraw(child, procedure, new ProcedureId(ids.next()), "of another child"));
        assertThat(standing()).isEmpty();
        assertThat(all()).hasSize(2 * charged);
        assertThat(all().stream()
                        .map(charge -> charge.line().priced().orElseThrow().total())
                        .reduce(Money::plus))
                .contains(Money.of("0", "EUR"));
        assertThat(all())
                .filteredOn(charge -> charge.reverses().isPresent())
                .allMatch(charge -> charge.reason().equals(Optional.of("FACT_CHANGED")))
                .allMatch(charge -> charge.line().quantity().signum() < 0);
    }

    @Test
    void aCorrectedOperationIsChargedOnceAsItNowStands() {
        var procedure = plate();
        var data = TestTreatment.of(
                today,
                Act.of(
                        ProcedureKind.PLATE_PLACED,
                        TestTreatment.FEMUR,
                        PlateSide.LATERAL,
                        TestTreatment.implant(),
                        "plate, 1 screw",
                        2));
        surgeon.does(() -> treatments.correct(child, procedure, new ProcedureId(ids.next()), data, "counted again"));
        assertThat(told())
                .contains("IMPLANT PIECES_COUNTED 2.00 x 94.0000 = 188.00 + 23.50")
                .hasSize(5);
    }

    @Test
    void nothingIsKeptOfAnOperationWhoseChargesCannotBe() {
        network.owner()
                .sql("alter table charge add constraint nothing_here check (recorded_site <> '" + site.value()
                        + "') not valid")
                .update();
        try {
            assertThatThrownBy(this::plate).hasStackTraceContaining("nothing_here");
        } finally {
            network.owner()
                    .sql("alter table charge drop constraint nothing_here")
                    .update();
        }
        assertThat(surgeon.does(() -> treatments.of(child)).procedures()).isEmpty();
        assertThat(surgeon.does(() -> visits.of(child)).past()).isEmpty();
        plate();
        assertThat(standing()).hasSize(5);
    }

    @Test
    void aVisitIsChargedWhenTheChildCameAndAsMissedWhenNotBrought() {
        var open = surgeon.does(() -> visits.of(child)).open().orElseThrow();
        surgeon.does(() -> visits.record(open, new Happening.NotBrought(today, VisitReason.FORGOTTEN, "")));
        var next = surgeon.does(() -> visits.of(child)).open().orElseThrow();
        surgeon.does(() -> visits.record(next, new Happening.Arrived(today, Optional.empty())));
        assertThat(told())
                .containsExactlyInAnyOrder(
                        "MISSED_VISIT NOT_BROUGHT 1.00 x 87.0000 = 87.00 + 10.88",
                        "VISIT CAME 1.00 x 31.0000 = 31.00 + 3.88");
    }

    @Test
    void lettersOfOneDayAreChargedTogetherAndCallsAreNot() {
        var open = surgeon.does(() -> visits.of(child)).open().orElseThrow();
        for (var channel : List.of(Channel.LETTER, Channel.CALL, Channel.LETTER)) {
            surgeon.does(() -> {
                recall.tried(
                        open,
                        new Attempt(
                                today,
                                channel,
                                AttemptOutcome.NO_ANSWER,
                                Optional.empty(),
                                Optional.empty(),
                                Optional.empty()));
                return channel;
            });
        }
        assertThat(told()).containsExactly("LETTER LETTER_SENT 2.00 x 80.0000 = 160.00 + 20.00");
    }

    @Test
    void aFilmIsChargedToWhoseItIs() {
        var film = reader.film(surgeon, child, LocalDate.of(2026, 2, 3));
        assertThat(told()).containsExactly("FILM FILM_TAKEN 1.00 x 38.0000 = 38.00 + 4.75");
        var other = reader.child(surgeon, LocalDate.of(2015, 1, 1));
        surgeon.does(() -> {
            var found = films.find(film).orElseThrow();
            return films.assign(film, found.version(), other, LocalDate.of(2026, 2, 3), "of another child");
        });
        assertThat(standing()).isEmpty();
        child = other;
        assertThat(told()).hasSize(1);
    }

    @Test
    void aTariffChangedAfterwardsReversesAndWritesAnewFromItsFirstDayOn() {
        plate();
        as(() -> tariffs.set(site, TestCost.price(TariffItem.BED_DAY, "30", today)));
        costs.renew(site, child);
        assertThat(told()).contains("BED_DAY LONGEST 1.00 x 30.0000 = 30.00 + 3.75");
        assertThat(all())
                .filteredOn(charge -> charge.reverses().isPresent())
                .singleElement()
                .satisfies(charge -> assertThat(charge.reason()).contains("PRICE_CHANGED"));
        as(() -> tariffs.set(site, TestCost.price(TariffItem.BED_DAY, "99", today.plusDays(1))));
        assertThat(costs.renew(site, child)).isZero();
    }

    @Test
    void aLaterTariffEndsTheEarlierAndOneOfTheSameDayTakesItsPlace() {
        var change = LocalDate.of(2026, 1, 1);
        as(() -> tariffs.set(site, TestCost.price(TariffItem.VISIT, "50", change)));
        as(() -> tariffs.set(site, TestCost.price(TariffItem.VISIT, "51", change)));
        as(() -> tariffs.set(site, TestCost.price(TariffItem.VISIT, "40", LocalDate.of(2023, 1, 1))));
        var book = new TariffBook(as(() -> tariffs.all(site)));
        assertThat(List.of("2022-12-31", "2023-01-01", "2025-12-31", "2026-01-01"))
                .extracting(day -> book.find(TariffItem.VISIT, "", LocalDate.parse(day))
                        .orElseThrow()
                        .data()
                        .price()
                        .intValueExact())
                .containsExactly(31, 40, 40, 51);
        assertThat(as(() -> tariffs.all(site)).stream().filter(Tariff::replaced))
                .extracting(one -> one.data().price().intValueExact())
                .containsExactly(50);
    }

    @Test
    void whatHadNoTariffIsWrittenWithoutAPriceAndPricedWhenThereIsOne() {
        var poor = reader.surgeon();
        var there = reader.child(poor, LocalDate.of(2016, 5, 20));
        var open = poor.does(() -> visits.of(there)).open().orElseThrow();
        poor.does(() -> visits.record(open, new Happening.Arrived(today, Optional.empty())));
        var account = costs.account(poor.staff(), there);
        assertThat(poor.does(() -> charges.ofAccount(account)))
                .singleElement()
                .satisfies(charge -> assertThat(charge.line().priced()).isEmpty());
        costs.administrator(poor.site());
        costs.renew(poor.site(), there);
        assertThat(poor.does(() -> charges.ofAccount(account)).stream().filter(Charge::stands))
                .singleElement()
                .satisfies(charge -> assertThat(charge.line().priced()).isPresent());
    }

    @Test
    void anAdjustedChargeIsLeftAloneByTheRulesUntilItsFactIsGone() {
        var procedure = plate();
        var bed = standing().stream()
                .filter(charge -> charge.line().item() == TariffItem.BED_DAY)
                .findFirst()
                .orElseThrow();
        assertThat(as(() -> charges.adjust(bed.id(), number("3"), "stayed with a fever")))
                .isTrue();
        assertThat(as(() -> charges.adjust(bed.id(), number("2"), "said twice")))
                .isFalse();
        assertThat(costs.renew(site, child)).isZero();
        assertThat(told())
                .contains("BED_DAY LONGEST 3.00 x 24.0000 = 72.00 + 9.00")
                .hasSize(5);
        surgeon.does(() -> treatments.withdraw(child, procedure, new ProcedureId(ids.next()), "of another child"));
        assertThat(standing()).isEmpty();
    }

    @Test
    void whatNoRuleKnowsOfIsAddedByHandAndStays() {
        plate();
        var account = account();
        as(() -> {
            charges.add(account, TariffItem.PHYSIOTHERAPY, today, number("6"), "six sessions after the plate");
            return account;
        });
        costs.renew(site, child);
        assertThat(told()).contains("PHYSIOTHERAPY BY_HAND 6.00 x 66.0000 = 396.00 + 49.50");
    }

    @Test
    void makingAnewFindsWhatThePersonAtWorkCouldNotTellAndThenNothingMore() {
        surgeon.does(() -> {
            var report = new ImagingReport(
                    today,
                    ImagingReport.Modality.MAGNETIC_RESONANCE,
                    org.espalier.patient.AffectedSides.RIGHT,
                    null,
                    null,
                    null,
                    null,
                    "Invented reader",
                    null);
            examinations.record(child, new FactId(ids.next()), report);
            return report;
        });
        plate();
        reader.film(surgeon, child, LocalDate.of(2026, 2, 3));
        var kept = told();
        costs.renew(site, child);
        assertThat(told()).containsAll(kept).contains("MRI MRI_REPORTED 1.00 x 45.0000 = 45.00 + 5.63");
        assertThat(costs.renew(site, child)).isZero();
    }

    @Test
    void whoPaysElseIsChargedByTheirOwnTariff() {
        plate();
        as(() -> tariffs.set(site, TestCost.priceFor("Fund", TariffItem.BED_DAY, "19", LONG_AGO)));
        var account = account();
        as(() -> {
            charges.pay(account, "Fund");
            return account;
        });
        costs.renew(site, child);
        assertThat(told())
                .contains("BED_DAY LONGEST 1.00 x 19.0000 = 19.00 + 2.38")
                .hasSize(5);
    }

    @Test
    void onlyTheHospitalsOwnCostAdministratorSetsAdjustsAndAdds() {
        plate();
        var charge = standing().getFirst();
        var stranger = network.staff(network.site(), "COST_ADMINISTRATOR");
        assertThatThrownBy(() ->
                        network.as(stranger, () -> tariffs.set(site, TestCost.price(TariffItem.VISIT, "1", LONG_AGO))))
                .isInstanceOf(AccessDeniedException.class);
        assertThat(network.as(stranger, () -> charges.adjust(charge.id(), number("1"), "not theirs")))
                .isFalse();
        assertThat(network.as(stranger, () -> charges.ofPeriod(site, LONG_AGO, today)))
                .isEmpty();
        assertThatThrownBy(() -> surgeon.does(() -> charges.adjust(charge.id(), number("1"), "a surgeon's")))
                .isInstanceOf(AccessDeniedException.class);
    }

    @Test
    void aPseudonymStays() {
        plate();
        var account = account();
        assertThat(account.pseudonym()).isEqualTo(account().pseudonym());
        assertThat(as(() -> charges.ofPeriod(site, today, today))).isNotEmpty().allMatch(booked -> booked.pseudonym()
                .equals(account.pseudonym()));
    }

    private ProcedureId plate() {
        var procedure = new ProcedureId(ids.next());
        surgeon.does(() -> record(procedure));
        return procedure;
    }

    private RecordOutcome record(ProcedureId procedure) {
        var outcome = treatments.record(
                child,
                procedure,
                TestTreatment.plate(today, TestTreatment.FEMUR, PlateSide.LATERAL, TestTreatment.implant()));
        assertThat(outcome).isInstanceOf(RecordOutcome.Recorded.class);
        return outcome;
    }

    private Account account() {
        return costs.account(surgeon.staff(), child);
    }

    private List<Charge> all() {
        return as(() -> charges.ofAccount(account()));
    }

    private List<Charge> standing() {
        return all().stream().filter(Charge::stands).toList();
    }

    private List<String> told() {
        return standing().stream().map(ChargeIntegrationTests::told).toList();
    }

    private static String told(Charge charge) {
        var line = charge.line();
        var priced = line.priced().orElseThrow();
        return line.item() + " " + line.rule() + " " + line.quantity() + " x " + priced.unit() + " = "
                + priced.amount().amount() + " + " + priced.overhead().amount();
    }

    private <T> T as(java.util.function.Supplier<T> work) {
        return network.as(administrator, work);
    }
}
