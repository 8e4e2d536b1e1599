package org.espalier.followup;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.awaitility.Awaitility;
import org.espalier.IntegrationTest;
import org.espalier.access.SiteService;
import org.espalier.film.TestDoor.Sender;
import org.espalier.patient.AffectedSides;
import org.espalier.patient.Bone;
import org.espalier.patient.BoneEnd;
import org.espalier.patient.ChildId;
import org.espalier.patient.Diagnosis;
import org.espalier.patient.DiagnosisKind;
import org.espalier.patient.ExaminationService;
import org.espalier.patient.FactId;
import org.espalier.platform.Ids;
import org.espalier.reading.ScrewSeen;
import org.espalier.reading.Seen;
import org.espalier.reading.TestReader;
import org.espalier.science.quantity.Side;
import org.espalier.treatment.Act;
import org.espalier.treatment.ImplantId;
import org.espalier.treatment.NextLook;
import org.espalier.treatment.PhysisKey;
import org.espalier.treatment.PlateSide;
import org.espalier.treatment.ProcedureData;
import org.espalier.treatment.ProcedureId;
import org.espalier.treatment.ProcedureKind;
import org.espalier.treatment.TreatmentService;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

/**
 * A right tibia 15 degrees short of its target, a plate on its lateral side for a year: each film moves the next look.
 */
@IntegrationTest
class ForecastFollowupIntegrationTests {

    private static final PhysisKey TIBIA = new PhysisKey(Side.RIGHT, Bone.TIBIA, BoneEnd.PROXIMAL);

    @Autowired
    TestReader reader;

    @Autowired
    TreatmentService treatments;

    @Autowired
    ExaminationService examinations;

    @Autowired
    VisitService visits;

    @Autowired
    SiteService sites;

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
        var act = Act.of(
                ProcedureKind.PLATE_PLACED, TIBIA, PlateSide.LATERAL, new ImplantId(ids.next()), "plate, 2 screws", 3);
        var placed = today.minusMonths(12);
        var data = new ProcedureData(placed, true, null, null, List.of(act), new NextLook(placed.plusDays(84), "film"));
        assertThat(surgeon.does(() -> treatments.record(child, new ProcedureId(ids.next()), data))
                        .isRecorded())
                .isTrue();
    }

    private void readEveryThreeMonths(double first, double second, double third) {
        read(today.minusMonths(9), first);
        read(today.minusMonths(6), second);
        read(today.minusMonths(3), third);
    }

    @Test
    void aFilmNearTheTargetBringsTheNextLookForward() {
        readEveryThreeMonths(2.5, 5.2, 8.1);
        arrive();
        var before = due();

        read(today, 13.6);

        var after = due();
        assertThat(after.lookBy()).isBefore(before.lookBy());
        assertThat(after.rule()).isEqualTo(DueRule.PAST_TARGET);
        assertThat(after.risk()).isInstanceOfSatisfying(Risk.PastTarget.class, risk -> {
            assertThat(risk.inTime()).isBetween(0.0, 1.0);
            assertThat(risk.monthLater()).isGreaterThan(risk.inTime());
        });
    }

    @Test
    void whoIsExpectedPastTheTargetIsRankedByDegrees() {
        readEveryThreeMonths(4.2, 7.9, 11.8);
        read(today.minusDays(1), 15.2);

        assertThat(due().harm().kind()).isEqualTo(Harm.Kind.PAST_TARGET);
        assertThat(due().harm().degrees()).isBetween(0.3, 6.0);
        assertThat(due().harm().plate()).contains(due().plate().orElseThrow());
        assertThat(due().harm().past())
                .hasValueSatisfying(
                        past -> assertThat(due().harm().degrees()).isBetween(past.lowDegrees(), past.highDegrees()));
    }

    /** Told at registering years before, the child would else be looked at as one who was seen long since. */
    @Test
    void aCutBoneIsFilmedWhileItsCastCanBeWedged() {
        readEveryThreeMonths(0.5, 0.8, 1);
        read(today, 1.2);
        var act = Act.ofLimb(ProcedureKind.OSTEOTOMY, Side.RIGHT, "wires, cast", 2);
        var data = new ProcedureData(
                today, true, null, null, List.of(act), new NextLook(today.plusDays(60), "see how it heals"));
        assertThat(surgeon.does(() -> treatments.record(child, new ProcedureId(ids.next()), data))
                        .isRecorded())
                .isTrue();

        assertThat(due().rule()).isEqualTo(DueRule.HEALING);
        assertThat(due().lookBy()).isEqualTo(today.plusDays(14));
        assertThat(due().film()).isTrue();
    }

    @Test
    void aScrewThatAReadingShowsBrokenRanksAboveEveryForecast() {
        var screw = ScrewSeen.asked(Side.RIGHT, ScrewSeen.Plate.PROXIMAL_TIBIA, ScrewSeen.Screw.METAPHYSIS)
                .withExposed(Seen.NO)
                .withBent(Seen.NO)
                .withBroken(Seen.YES)
                .withLoose(Seen.NO);
        reader.signedWithScrews(surgeon, reader.film(surgeon, child, today.minusDays(1)), List.of(screw));

        assertThat(due().harm().kind()).isEqualTo(Harm.Kind.SCREW);
        assertThat(due().film()).isTrue();
    }

    /** Rickets turns quickly: seen within four months, not six, as soon as it is written down. */
    @Test
    void aDiagnosisBringsTheNextLookForward() {
        readEveryThreeMonths(0.5, 0.8, 1);
        read(today, 1.2);
        arrive();
        assertThat(due().lookBy()).isEqualTo(today.plusMonths(6));
        var rickets =
                new Diagnosis(today, DiagnosisKind.RICKETS_HYPOPHOSPHATAEMIC, AffectedSides.BOTH, null, null, null);
        surgeon.does(() -> {
            examinations.record(child, new FactId(ids.next()), rickets);
            return child;
        });

        Awaitility.await().atMost(Duration.ofSeconds(30)).until(() -> due().lookBy()
                .equals(today.plusMonths(4)));
        assertThat(due().rule()).isEqualTo(DueRule.PLATE_LONGEST_YOUNG);
    }

    @Test
    void aBentTibiaWithoutAPlateIsDecidedBeforeItsWindowCloses() {
        arrive();

        assertThat(due().decideBy()).hasValueSatisfying(day -> assertThat(day).isAfter(today));
    }

    private void arrive() {
        surgeon.does(() ->
                visits.record(visits.of(child).open().orElseThrow(), new Happening.Arrived(today, Optional.empty())));
    }

    private Due due() {
        return surgeon.does(() -> visits.of(child)).open().orElseThrow().due();
    }

    private void read(LocalDate on, double straightened) {
        reader.signed(surgeon, reader.film(surgeon, child, on), straightened);
    }
}
