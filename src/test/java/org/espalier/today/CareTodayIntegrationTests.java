package org.espalier.today;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.espalier.IntegrationTest;
import org.espalier.TestNetwork;
import org.espalier.access.SiteService;
import org.espalier.film.FilmProtocol;
import org.espalier.film.TestDoor.Sender;
import org.espalier.followup.Happening;
import org.espalier.followup.VisitService;
import org.espalier.patient.Bone;
import org.espalier.patient.BoneEnd;
import org.espalier.patient.ChildId;
import org.espalier.patient.FactId;
import org.espalier.platform.Ids;
import org.espalier.reading.TestReader;
import org.espalier.science.quantity.Side;
import org.espalier.treatment.Act;
import org.espalier.treatment.Deformity;
import org.espalier.treatment.ImplantId;
import org.espalier.treatment.NextLook;
import org.espalier.treatment.PhysisKey;
import org.espalier.treatment.Plan;
import org.espalier.treatment.PlateSide;
import org.espalier.treatment.ProcedureData;
import org.espalier.treatment.ProcedureId;
import org.espalier.treatment.ProcedureKind;
import org.espalier.treatment.TreatmentFactService;
import org.espalier.treatment.TreatmentService;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

/** The surgeon's two minutes, on a child whose right tibia stands at its target after a year with a plate. */
@IntegrationTest
class CareTodayIntegrationTests {

    private static final PhysisKey TIBIA = new PhysisKey(Side.RIGHT, Bone.TIBIA, BoneEnd.PROXIMAL);

    @Autowired
    TodayService service;

    @Autowired
    TestReader reader;

    @Autowired
    TreatmentService treatments;

    @Autowired
    TreatmentFactService facts;

    @Autowired
    VisitService visits;

    @Autowired
    SiteService sites;

    @Autowired
    TestNetwork network;

    @Autowired
    Ids ids;

    Sender surgeon;
    ChildId child;
    LocalDate today;

    @BeforeEach
    void aPlateForAYear() {
        surgeon = reader.surgeon();
        today = surgeon.does(() -> sites.today(surgeon.site()));
        child = reader.child(surgeon, today.minusYears(8));
        read(today.minusMonths(13), 0);
        place(today.minusMonths(12));
        read(today.minusMonths(9), 4.2);
        read(today.minusMonths(6), 7.9);
        read(today.minusMonths(3), 11.8);
        read(today.minusDays(1), 15.2);
    }

    @Test
    void namesWhoIsNearTheTargetAndLateForIt() {
        assertThat(care().nearTarget().shown())
                .extracting(one -> one.child().id())
                .containsExactly(child);
        assertThat(care().nearTarget().shown().getFirst().listBy()).isBefore(today.plusWeeks(8));
        assertThat(care().late().shown().getFirst().about()).isEqualTo("PAST_TARGET");
        assertThat(care().theatre()).isEmpty();
    }

    @Test
    void saysWhichPlateWhatIsLeftAndWhatIsMissing() {
        order(child, today.minusDays(2));

        var near = care().nearTarget().shown().getFirst();
        var plate = near.plate().orElseThrow();

        assertThat(plate.physis()).isEqualTo(TIBIA);
        assertThat(plate.corrects()).isEqualTo(org.espalier.science.forecast.Deformity.VARUS);
        assertThat(plate.least()).isLessThan(plate.left());
        assertThat(plate.most()).isGreaterThan(plate.left());
        assertThat(plate.lastFilm()).contains(today.minusDays(1));
        assertThat(plate.arrival().middle()).isPresent();
        assertThat(near.filmsMissing())
                .containsExactly(
                        new NearTarget.MissingFilm(FilmProtocol.LONG_STANDING, today.minusDays(2), today.minusDays(2)));
        assertThat(near.dateMissing()).isTrue();
    }

    @Test
    void leavesOutWhoIsListedAndShowsTheDayInTheatre() {
        var day = today.plusDays(3);
        var plan = Plan.decided(today, ProcedureKind.PLATE_OUT, TIBIA, PlateSide.LATERAL, Deformity.VARUS)
                .listed(today, day, null);

        assertThat(surgeon.does(() -> facts.record(child, new FactId(ids.next()), plan))
                        .isRecorded())
                .isTrue();

        assertThat(care().nearTarget().isEmpty()).isTrue();
        assertThat(care().theatre()).containsExactly(new TheatreDay(day, 1));
    }

    @Test
    void showsPlatesSinceTheLastClinicAndFilmsNotTaken() {
        surgeon.does(() -> visits.record(
                visits.of(child).open().orElseThrow(), new Happening.Arrived(today.minusDays(7), Optional.empty())));
        assertThat(care().lastClinic()).contains(today.minusDays(7));
        assertThat(care().plates().isEmpty()).isTrue();
        var other = reader.child(surgeon, today.minusYears(9));
        place(other, today.minusDays(6));
        assertThat(care().plates().shown()).extracting(one -> one.child().id()).containsExactly(other);
        order(other, today.minusDays(2));
        assertThat(care().notTaken().shown()).extracting(Dated::day).containsExactly(today.minusDays(2));
    }

    private void order(ChildId whom, LocalDate day) {
        network.owner()
                .sql("""
                        insert into film_order (id, site_id, recorded_site, child_id, asked_on, for_day, needed, sides,
                            protocol, ball, recorded_at)
                        values (:id, :site, :site, :child, :day, :day, true, 'BOTH', 'LONG_STANDING', true, now())
                        """)
                .param("id", ids.next())
                .param("site", surgeon.site().value())
                .param("child", whom.value())
                .param("day", day)
                .update();
    }

    private CareToday care() {
        return surgeon.does(() -> service.open()).getFirst().care();
    }

    private void place(LocalDate on) {
        place(child, on);
    }

    private void place(ChildId whom, LocalDate on) {
        var act = Act.of(
                ProcedureKind.PLATE_PLACED, TIBIA, PlateSide.LATERAL, new ImplantId(ids.next()), "plate, 2 screws", 3);
        boolean before = on.isBefore(today.minusMonths(1));
        var data = new ProcedureData(on, before, null, null, List.of(act), new NextLook(on.plusDays(84), "film"));
        assertThat(surgeon.does(() -> treatments.record(whom, new ProcedureId(ids.next()), data))
                        .isRecorded())
                .isTrue();
    }

    private void read(LocalDate on, double straightened) {
        reader.signed(surgeon, reader.film(surgeon, child, on), straightened);
    }
}
