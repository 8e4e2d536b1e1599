package org.espalier.prognosis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.function.Supplier;
import org.awaitility.Awaitility;
import org.espalier.IntegrationTest;
import org.espalier.TestNetwork;
import org.espalier.film.TestDoor.Sender;
import org.espalier.patient.ChildId;
import org.espalier.patient.FactId;
import org.espalier.platform.Caller;
import org.espalier.platform.Callers;
import org.espalier.platform.Ids;
import org.espalier.platform.Night;
import org.espalier.reading.TestReader;
import org.espalier.science.forecast.Cause;
import org.espalier.science.forecast.Deformity;
import org.espalier.science.growth.GrowthMethod;
import org.espalier.science.growth.PlateWindow;
import org.espalier.science.quantity.Side;
import org.espalier.treatment.Act;
import org.espalier.treatment.ImplantFinding;
import org.espalier.treatment.NextLook;
import org.espalier.treatment.PhysisState;
import org.espalier.treatment.PlateSide;
import org.espalier.treatment.ProcedureData;
import org.espalier.treatment.ProcedureKind;
import org.espalier.treatment.TreatmentFactService;
import org.espalier.treatment.TreatmentService;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.transaction.support.TransactionTemplate;

@IntegrationTest
class PrognosisIntegrationTests {

    @Autowired
    PrognosisService prognoses;

    @Autowired
    RatesService rates;

    @Autowired
    Renewal renewal;

    @Autowired
    Nightly nightly;

    @Autowired
    JdbcForecastRepository forecasts;

    @Autowired
    TestReader reader;

    @Autowired
    TestCourse courses;

    @Autowired
    TestNetwork network;

    @Autowired
    TreatmentService treatments;

    @Autowired
    TreatmentFactService facts;

    @Autowired
    TransactionTemplate transactions;

    @Autowired
    Ids ids;

    Sender surgeon;

    @BeforeEach
    void surgeon() {
        surgeon = reader.surgeon();
    }

    @Test
    void forecastsATetheredTibiaFromItsFilms() {
        var child = courses.underWay(surgeon);
        var physis = of(child).physis(TestCourse.RIGHT_TIBIA).orElseThrow();
        var forecast = physis.forecast().orElseThrow();
        assertThat(physis.state()).isEqualTo(PhysisState.TETHERED);
        assertThat(forecast.isPlaced()).isTrue();
        assertThat(forecast.plateOn()).isEqualTo(TestCourse.PLATE);
        assertThat(forecast.corrects()).isEqualTo(Deformity.VARUS);
        assertThat(forecast.cause()).isEqualTo(Cause.IDIOPATHIC_VARUS);
        assertThat(forecast.isCauseStudied()).isFalse();
        assertThat(forecast.films()).hasSize(4).startsWith(TestCourse.BEFORE);
        assertThat(forecast.from()).isEqualTo(LocalDate.of(2026, 8, 3));
        var now = forecast.angle(forecast.from());
        assertThat(now.middle().degrees()).isCloseTo(80, within(1.0));
        assertThat(now.low90()).isLessThan(now.low50());
        assertThat(forecast.angle(forecast.from().plusMonths(3)).middle()).isGreaterThan(now.middle());
        var arrival = forecast.arrival();
        assertThat(arrival.middle().orElseThrow()).isBetween("2027-01-01", "2027-09-01");
        assertThat(arrival.earliest().orElseThrow()).isBefore(arrival.middle().orElseThrow());
        assertThat(arrival.never()).isBetween(0.0, 0.5);
        assertThat(forecast.chancePast(forecast.from(), 2)).isLessThan(0.01);
        assertThat(forecast.chancePast(LocalDate.of(2029, 1, 1), 2)).isGreaterThan(0.5);
        assertThat(forecast.past(LocalDate.of(2029, 1, 1)).degrees()).isPositive();
        assertThat(forecast.change(forecast.from(), forecast.from().plusMonths(3)))
                .isBetween(1.0, 4.0);
    }

    @Test
    void looksFurtherWithoutAnyFilmSinceThePlate() {
        var child = courses.plated(surgeon);
        var forecast = of(child)
                .physis(TestCourse.RIGHT_TIBIA)
                .orElseThrow()
                .forecast()
                .orElseThrow();
        assertThat(forecast.from()).isEqualTo(TestCourse.PLATE);
        var wide = forecast.angle(TestCourse.PLATE.plusMonths(9));
        courses.film(surgeon, child, LocalDate.of(2026, 5, 4), 5.2);
        var narrow = of(child)
                .physis(TestCourse.RIGHT_TIBIA)
                .orElseThrow()
                .forecast()
                .orElseThrow()
                .angle(TestCourse.PLATE.plusMonths(9));
        assertThat(wide.high90().minus(wide.low90()))
                .isGreaterThan(narrow.high90().minus(narrow.low90()));
    }

    @Test
    void asksOfAWatchedPhysisWhatAPlateWouldDoAndUntilWhen() {
        var child = reader.child(surgeon, TestCourse.BIRTH);
        reader.signed(surgeon, reader.film(surgeon, child, LocalDate.of(2026, 8, 3)));
        var physis = of(child).physis(TestCourse.RIGHT_TIBIA).orElseThrow();
        assertThat(physis.forecast().orElseThrow().isPlaced()).isFalse();
        assertThat(physis.growth())
                .extracting(GrowthOf::method)
                .containsExactly(GrowthMethod.LENGTHS_BY_AGE, GrowthMethod.MULTIPLIER, GrowthMethod.YEARLY);
        assertThat(physis.window()).hasValueSatisfying(window -> assertThat(window)
                .isInstanceOfSatisfying(
                        PlateWindow.Dates.class, dates -> assertThat(dates.by()).isBefore(dates.evenly())));
        assertThat(of(child).limbs()).isEmpty();
    }

    @Test
    void saysHowLongTheLegsWillBeByTwoWays() {
        var lengths = of(courses.underWay(surgeon)).lengths().orElseThrow();
        assertThat(lengths.on()).isEqualTo(LocalDate.of(2026, 8, 3));
        assertThat(lengths.ways())
                .extracting(LengthOutlook.AtMaturity::method)
                .containsExactly(GrowthMethod.LENGTHS_BY_AGE, GrowthMethod.MULTIPLIER);
        assertThat(lengths.ways()).allSatisfy(way -> {
            var femur = way.right().femur();
            assertThat(femur.growth().millimetres()).isPositive();
            assertThat(femur.low()).isLessThan(femur.length());
            assertThat(femur.high()).isGreaterThan(femur.length());
            assertThat(way.sinceBirth().difference().millimetres())
                    .isCloseTo(
                            way.right().femur().length().millimetres()
                                    + way.right().tibia().length().millimetres()
                                    - way.left().femur().length().millimetres()
                                    - way.left().tibia().length().millimetres(),
                            within(5.0));
        });
    }

    @Test
    void addsFemurAndTibiaOfALimb() {
        var child = courses.underWay(surgeon);
        var limb = of(child).limb(Side.RIGHT).orElseThrow();
        var today = of(child).today();
        assertThat(limb.bonyHka(today).middle().degrees()).isPositive();
        assertThat(limb.hka(today).middle()).isNotEqualTo(limb.bonyHka(today).middle());
        limb.bonyStraight().ifPresent(straight -> {
            assertThat(straight.day()).isAfter(today).isAfterOrEqualTo(straight.earliest());
            straight.latest().ifPresent(latest -> assertThat(latest).isAfterOrEqualTo(straight.day()));
            assertThat(straight.femur().minus(straight.tibia()).degrees()).isCloseTo(0, within(0.5));
        });
        assertThat(limb.ifFemurOut()).isEmpty();
        assertThat(limb.isHeld()).isTrue();
        var out = limb.ifTibiaOut().orElseThrow();
        assertThat(out.isHeld()).isFalse();
        assertThat(out.bonyHka(out.ends()).middle().degrees())
                .isCloseTo(limb.bonyHka(today).middle().degrees(), within(0.2));
    }

    @Test
    void tellsWhatMayComeBackAfterReleaseAndGoOnWhileParked() {
        var child = courses.underWay(surgeon);
        courses.metaphysealScrewOut(surgeon, child, LocalDate.of(2026, 8, 10), TestCourse.RIGHT_TIBIA);
        courses.plateOut(surgeon, child, LocalDate.of(2026, 8, 10), TestCourse.LEFT_TIBIA);
        var parked =
                (Resting) of(child).physis(TestCourse.RIGHT_TIBIA).orElseThrow().outlook();
        var released =
                (Resting) of(child).physis(TestCourse.LEFT_TIBIA).orElseThrow().outlook();
        assertThat(parked.isParked()).isTrue();
        assertThat(released.isParked()).isFalse();
        assertThat(released.chanceOfReturn()).isBetween(0.3, 0.6);
        var later = LocalDate.of(2028, 8, 10);
        assertThat(released.angle(later).low90())
                .isLessThan(released.angle(released.from()).low90());
        assertThat(parked.angle(later).high90())
                .isGreaterThan(released.angle(later).high90());
        assertThat(of(child).limbs()).isEmpty();
    }

    @Test
    void startsAParkedPlateThatGoesOnFromWhatTheLastFilmShows() {
        var child = courses.plated(surgeon);
        courses.film(surgeon, child, LocalDate.of(2026, 2, 2), 2.5);
        courses.metaphysealScrewOut(surgeon, child, LocalDate.of(2026, 2, 3), TestCourse.RIGHT_TIBIA);
        courses.plateOut(surgeon, child, LocalDate.of(2026, 2, 3), TestCourse.LEFT_TIBIA);
        courses.film(surgeon, child, LocalDate.of(2026, 8, 3), 2.5);
        var parked =
                (Resting) of(child).physis(TestCourse.RIGHT_TIBIA).orElseThrow().outlook();
        var released =
                (Resting) of(child).physis(TestCourse.LEFT_TIBIA).orElseThrow().outlook();
        var seen = LocalDate.of(2026, 8, 3);
        assertThat(parked.angle(seen).high90().degrees())
                .isCloseTo(released.angle(seen).high90().degrees(), within(0.8));
    }

    @Test
    void showsTheCourseOfAYoungBowAndThatItFallsBehind() {
        var child = courses.youngBow(surgeon);
        var natural = of(child).natural(Side.RIGHT).orElseThrow();
        assertThat(natural.lastAngle().degrees()).isBetween(5.0, 12.0);
        assertThat(natural.place()).isBetween(0.5, 2.5);
        assertThat(natural.turnInSixMonths(natural.lastOn())).isBetween(1.0, 6.0);
        assertThat(natural.angle(natural.lastOn().plusYears(1)).middle()).isLessThan(natural.lastAngle());
        var trend = natural.trend().orElseThrow();
        assertThat(trend.seen()).isCloseTo(0, within(0.01));
        assertThat(trend.expected()).isGreaterThan(NaturalOutlook.LAG_POINTED_OUT);
        assertThat(trend.isBehind()).isTrue();
        courses.plate(surgeon, child, LocalDate.of(2026, 8, 10), TestCourse.RIGHT_TIBIA);
        assertThat(of(child).natural(Side.RIGHT)).isEmpty();
        assertThat(of(child).natural(Side.LEFT)).isPresent();
        assertThat(of(courses.underWay(surgeon)).natural()).isEmpty();
    }

    @Test
    void saysWhyThereIsNone() {
        var child = reader.child(surgeon, TestCourse.BIRTH);
        assertThat(of(child).physis(TestCourse.RIGHT_TIBIA).orElseThrow().outlook())
                .isEqualTo(new Outlook.None(Outlook.Reason.NO_RECENT_FILM));
    }

    @Test
    void showsAnotherSiteNothing() {
        var child = courses.plated(surgeon);
        assertThat(reader.surgeon().does(() -> prognoses.of(child))).isEmpty();
    }

    @Test
    void keepsEachForecastOnceAsItWasGiven() {
        var child = courses.plated(surgeon);
        awaitKept(child, 2);
        job(() -> {
            renewal.renew(surgeon.site(), child);
            return child;
        });
        assertThat(kept(child)).isEqualTo(2);
        courses.film(surgeon, child, LocalDate.of(2026, 5, 4), 5.2);
        awaitKept(child, 4);
        assertThatThrownBy(() -> network.owner()
                        .sql("update forecast set version = version + 1 where child_id = ?")
                        .param(child.value())
                        .update())
                .hasMessageContaining("is a fact");
    }

    @Test
    void goesOnAtNightWhereItStoppedAndRenewsOnlyWhatChanged() {
        var child = courses.plated(surgeon);
        awaitKept(child, 2);
        network.owner()
                .sql("""
                        insert into child
                            (id, site_id, recorded_site, initials, birth_month, recorded_at, needs_visit)
                        select gen_random_uuid(), ?, ?, 'N', '2018-03-01', now(), false from generate_series(1, ?)
                        """)
                .params(surgeon.site().value(), surgeon.site().value(), Nightly.CHUNK)
                .update();
        var first = job(() -> nightly.step(surgeon.site()));
        assertThat(first.looked()).isEqualTo(Nightly.CHUNK);
        assertThat(first.finished()).isFalse();
        var night = job(() -> nightly.run(surgeon.site()));
        assertThat(night.finished()).isTrue();
        assertThat(night.looked()).isEqualTo(Nightly.CHUNK + 1);
        assertThat(night.renewed()).isEqualTo(1);
        assertThat(kept(child)).isEqualTo(2);
        assertThat(job(() -> nightly.run(surgeon.site()))).isEqualTo(night);
        assertThat(nextNight().renewed()).isZero();
        courses.film(surgeon, child, LocalDate.of(2026, 5, 4), 5.2);
        assertThat(nextNight().renewed()).isEqualTo(1);
        awaitKept(child, 4);
    }

    /** What the night finds new is learnt from in the same night, so that the next one has nothing left to do. */
    @Test
    void keepsNothingOnANightBeforeWhichNothingChanged() {
        var child = courses.plated(surgeon);
        awaitKept(child, 2);
        job(() -> nightly.run(surgeon.site()));
        assertThat(kept(child)).isEqualTo(2);
        readWithoutAJob(child, 200, 3);
        readWithoutAJob(child, 280, 6);
        nextNight();
        assertThat(of(child).rates().learnt()).isPresent();
        int kept = kept(child);
        assertThat(kept)
                .as("before the films, with them, and by what they taught")
                .isEqualTo(6);
        assertThat(nextNight().renewed()).isZero();
        assertThat(kept(child)).isEqualTo(kept);
    }

    /** Another film and reading as the first one, of which no job was told. */
    private void readWithoutAJob(ChildId child, int daysLater, double degrees) {
        network.owner()
                .sql("""
                        with first as (
                            select r.id from reading r join film f on f.id = r.film_id
                            where r.child_id = :child order by f.taken_on limit 1),
                        films as (
                            insert into film select (jsonb_populate_record(f, jsonb_build_object(
                                'id', gen_random_uuid(), 'taken_on', f.taken_on + :days, 'sop_instance_uid', null,
                                'sha256', encode(sha256((f.id::text || :days)::bytea), 'hex')))).*
                            from film f where child_id = :child order by taken_on limit 1 returning id),
                        readings as (
                            insert into reading select (jsonb_populate_record(r, jsonb_build_object(
                                'id', gen_random_uuid(), 'film_id', (select id from films)))).*
                            from reading r join first on first.id = r.id returning id)
                        insert into reading_number select (jsonb_populate_record(n, jsonb_build_object(
                            'reading_id', (select id from readings), 'value', n.value + :degrees))).*
                        from reading_number n join first on first.id = n.reading_id
                        """)
                .param("child", child.value())
                .param("days", daysLater)
                .param("degrees", degrees)
                .update();
    }

    @Test
    void learnsFromTheSameLimbsWhicheverForecastsWereMadeLast() {
        var one = courses.plated(surgeon);
        var other = courses.plated(surgeon);
        awaitKept(one, 2);
        awaitKept(other, 2);
        var before = learntFrom(3);
        courses.film(surgeon, one, LocalDate.of(2026, 5, 4), 5.2);
        awaitKept(one, 4);
        courses.film(surgeon, other, LocalDate.of(2026, 5, 4), 5.2);
        awaitKept(other, 4);
        assertThat(learntFrom(3)).isEqualTo(before);
        assertThat(learntFrom(4)).hasSize(4);
    }

    /** The first of the limbs rates are learnt from, by plate and first film. */
    private List<String> learntFrom(int most) {
        return job(() -> transactions.execute(status -> forecasts.lastOfEachPlate(surgeon.site(), most))).stream()
                .map(limb -> limb.plateOn() + " " + limb.films().getFirst())
                .toList();
    }

    @Test
    void saysUntilWhenAnotherPlateCouldDoWhatThisOneDoesNot() {
        var child = courses.underWay(surgeon);
        assertThat(of(child).physis(TestCourse.RIGHT_TIBIA).orElseThrow().window())
                .hasValueSatisfying(window -> assertThat(window)
                        .isInstanceOfSatisfying(PlateWindow.Dates.class, dates -> assertThat(dates.by())
                                .isAfter(of(child).today())));
    }

    /** A broken screw that was exchanged says nothing of the new one. */
    @Test
    void beginsAnewWithANewScrewInPlaceOfABrokenOne() {
        var child = courses.underWay(surgeon);
        var plate = surgeon.does(() -> treatments.of(child))
                .physis(TestCourse.RIGHT_TIBIA)
                .orElseThrow();
        var implant = plate.tethersIn().getFirst().implant().orElseThrow();
        var broken = new ImplantFinding(
                LocalDate.of(2026, 8, 4),
                implant,
                ImplantFinding.Part.METAPHYSEAL_SCREW,
                ImplantFinding.Seen.BROKEN,
                null,
                null);
        surgeon.does(() -> facts.record(child, new FactId(ids.next()), broken));
        assertThat(rightTibia(child).hardwareFailed()).isGreaterThan(0.4);
        assertThat(rightTibia(child).seenBroken()).isPresent();

        var on = LocalDate.of(2026, 8, 20);
        var exchanged = Act.of(
                ProcedureKind.METAPHYSEAL_SCREW_EXCHANGED,
                TestCourse.RIGHT_TIBIA,
                PlateSide.LATERAL,
                implant,
                "screw exchanged",
                1);
        courses.record(
                surgeon,
                child,
                new ProcedureData(on, true, null, null, List.of(exchanged), new NextLook(on.plusDays(84), "film")));

        assertThat(rightTibia(child).plateOn()).isEqualTo(on);
        assertThat(rightTibia(child).seenBroken()).isEmpty();
        assertThat(rightTibia(child).hardwareFailed()).isLessThan(0.2);
        assertThat(rightTibia(child).films()).containsExactly(LocalDate.of(2026, 8, 3));
    }

    private Forecast rightTibia(ChildId child) {
        return of(child).physis(TestCourse.RIGHT_TIBIA).orElseThrow().forecast().orElseThrow();
    }

    /** The night's work as if a day had gone by. */
    private Night nextNight() {
        network.owner()
                .sql("update night_work set night = night - 1 where site_id = ?")
                .param(surgeon.site().value())
                .update();
        return job(() -> nightly.run(surgeon.site()));
    }

    @Test
    void refusesToReadForecastsWithoutACaller() {
        awaitKept(courses.plated(surgeon), 2);
        assertThatThrownBy(() -> forecasts.lastOfEachPlate(surgeon.site(), 1)).hasMessageContaining("no caller");
    }

    @Test
    void learnsFromTheCentresOwnLimbsUnlessItChoseThePublishedRates() {
        var child = courses.underWay(surgeon);
        Awaitility.await().atMost(Duration.ofSeconds(30)).until(() -> kept(child) >= 2);
        assertThat(of(child).rates().learnt()).isEmpty();
        job(() -> nightly.run(surgeon.site()));
        assertThat(of(child).rates().learnt().orElseThrow().limbs()).isEqualTo(2);
        assertThat(surgeon.does(() -> rates.of(surgeon.site())).learnt()).hasSize(1);
        surgeon.does(() -> {
            rates.choose(surgeon.site(), RateSource.PUBLISHED, "to compare with the series");
            return child;
        });
        assertThat(of(child).rates().learnt()).isEmpty();
        assertThat(surgeon.does(() -> rates.of(surgeon.site())).choices())
                .singleElement()
                .satisfies(choice -> assertThat(choice.reason()).isEqualTo("to compare with the series"));
    }

    private Prognosis of(ChildId child) {
        return surgeon.does(() -> prognoses.of(child)).orElseThrow();
    }

    private void awaitKept(ChildId child, int forecasts) {
        Awaitility.await().atMost(Duration.ofSeconds(30)).until(() -> kept(child) >= forecasts);
    }

    private int kept(ChildId child) {
        return network.owner()
                .sql("select count(*) from forecast where child_id = ?")
                .param(child.value())
                .query(Integer.class)
                .single();
    }

    private <T> T job(Supplier<T> work) {
        return Callers.callAs(new Caller.SystemAtSite(surgeon.site().value(), "test"), work);
    }
}
