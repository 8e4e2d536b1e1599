package org.espalier.demo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.espalier.IntegrationTest;
import org.espalier.TestNetwork;
import org.espalier.access.SiteId;
import org.espalier.access.StaffId;
import org.espalier.film.Film;
import org.espalier.film.FilmService;
import org.espalier.followup.VisitService;
import org.espalier.followup.VisitState;
import org.espalier.patient.ChildId;
import org.espalier.patient.ExaminationService;
import org.espalier.patient.PatientService;
import org.espalier.plan.PlanService;
import org.espalier.reading.DraftService;
import org.espalier.reading.Reading;
import org.espalier.reading.ReadingService;
import org.espalier.science.alignment.Quantity;
import org.espalier.science.quantity.Side;
import org.espalier.stock.CatalogueService;
import org.espalier.treatment.TreatmentFactService;
import org.espalier.treatment.TreatmentService;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

@IntegrationTest
class DemoCourseIntegrationTests {

    @Autowired
    private TestNetwork network;

    @Autowired
    private PatientService patients;

    @Autowired
    private ExaminationService examinations;

    @Autowired
    private PlanService plans;

    @Autowired
    private FilmService films;

    @Autowired
    private DraftService drafts;

    @Autowired
    private ReadingService readings;

    @Autowired
    private TreatmentService treatments;

    @Autowired
    private TreatmentFactService facts;

    @Autowired
    private VisitService visits;

    @Autowired
    private CatalogueService catalogue;

    @Autowired
    private Clock clock;

    private DemoCourse course;
    private DemoTeam team;
    private LocalDate firstDay;

    @BeforeEach
    void openAHospital() {
        UUID site = network.site();
        team = new DemoTeam(
                new SiteId(site),
                new StaffId(network.staff(site, "NURSE")),
                new StaffId(network.staff(site, "RADIOGRAPHER")),
                new StaffId(network.staff(site, "SURGEON")),
                Optional.of(new StaffId(network.staff(site, "SURGEON"))));
        course = new DemoCourse(patients, examinations, films, drafts, readings);
        firstDay = LocalDate.ofInstant(clock.instant(), clock.getZone());
    }

    @Test
    void tellsACourseThroughTheServicesAndGoesOnWhereItWasCutShort() {
        DemoStory story = DemoStories.all().getFirst();
        course.register(story, team, firstDay);
        course.visit(story, story.visits().getLast(), team, firstDay);
        assertThat(filmsOf(story)).hasSize(1);

        course.register(story, team, firstDay);
        story.visits().forEach(visit -> course.visit(story, visit, team, firstDay));
        story.visits().forEach(visit -> course.visit(story, visit, team, firstDay));

        assertThat(filmsOf(story)).hasSize(story.visits().size());
        assertThat(readingsOf(story).stream().filter(Reading::counts))
                .hasSize(story.visits().size());
        network.as(team.surgeon().value(), () -> {
            var examination = examinations.of(child(story));
            assertThat(examination.sizes().facts()).hasSize(story.visits().size());
            assertThat(examination.diagnoses().facts()).hasSize(1);
            return null;
        });
    }

    @Test
    void readsTheAnglesOfEachFilmByBallOrByTagsWithAHumanHand() {
        for (DemoStory story :
                List.of(DemoStories.all().get(5), DemoStories.all().get(30))) {
            DemoVisit visit = story.visits().getFirst();
            course.register(story, team, firstDay);
            course.visit(story, visit, team, firstDay);
            Reading reading = readingsOf(story).getFirst();
            assertThat(value(reading, Side.LEFT, Quantity.MLDFA))
                    .isCloseTo(visit.left().mLDFA().degrees(), within(3.0));
            assertThat(value(reading, Side.RIGHT, Quantity.MMPTA))
                    .isCloseTo(visit.right().mMPTA().degrees(), within(3.0));
            assertThat(value(reading, Side.RIGHT, Quantity.FEMUR_LENGTH)).isBetween(250.0, 400.0);
        }
    }

    @Test
    void keepsWhatASurgeonMeantAndTheStagesOfTwoReadersOnce() {
        DemoStory story = DemoStories.all().stream()
                .filter(one -> one.diagnosis() == DemoDiagnosis.INFANTILE_TIBIA_VARA)
                .findFirst()
                .orElseThrow();
        course.register(story, team, firstDay);
        course.visit(story, story.visits().getLast(), team, firstDay);
        var comparisons = new DemoComparisons(plans, examinations);
        comparisons.tell(story, team, firstDay);
        comparisons.tell(story, team, firstDay);
        network.as(team.surgeon().value(), () -> {
            assertThat(plans.saved(child(story))).hasSize(2).allSatisfy(kept -> assertThat(kept.intent())
                    .isPresent());
            assertThat(examinations.stagePairs(team.site())).hasSize(2);
            return null;
        });
    }

    private static double value(Reading reading, Side side, Quantity quantity) {
        return reading.numbers().stream()
                .filter(number -> number.side() == side && number.quantity() == quantity)
                .findFirst()
                .orElseThrow()
                .value()
                .orElseThrow();
    }

    @Test
    void leavesTheNewestFilmOfSomeChildrenUnread() {
        DemoStory story = DemoStories.all().get(6);
        DemoVisit visit = story.visits().getLast();
        course.register(story, team, firstDay);
        course.visit(story, visit, team, firstDay);
        assertThat(filmsOf(story)).hasSize(1);
        assertThat(readingsOf(story)).isEmpty();
    }

    @Test
    void tellsTheCareOfEveryChildOfAHospitalOnceThoughToldTwice() {
        var care = new DemoCare(treatments, facts, visits, new DemoPieces(catalogue));
        for (DemoStory story : MoorStories.all()) {
            course.register(story, team, firstDay);
            care.tell(story, team, firstDay);
            care.tell(story, team, firstDay);
            network.as(team.surgeon().value(), () -> {
                var known = visits.of(child(story));
                assertThat(known.open()).as(story.number()).isPresent();
                assertThat(known.past().stream().filter(visit -> visit.state() == VisitState.NOT_BROUGHT))
                        .hasSameSizeAs(story.missed());
                var treatment = treatments.of(child(story));
                assertThat(treatment.procedures()).hasSize((int) story.deeds().stream()
                        .map(DemoDeed::ageMonths)
                        .distinct()
                        .count());
                return null;
            });
        }
    }

    @Test
    void endsTheCareOfBothLimbsOfTheGrownOnceThoughToldTwice() {
        var care = new DemoCare(treatments, facts, visits, new DemoPieces(catalogue));
        for (DemoStory story : EndedStories.all().subList(0, EndedStories.A_YEAR)) {
            course.register(story, team, firstDay);
            for (int told = 0; told < 2; told++) {
                care.tell(story, team, firstDay);
                care.end(story, team, EndedStories.endOf(story, firstDay));
            }
            network.as(team.surgeon().value(), () -> {
                assertThat(visits.of(child(story)).open()).as(story.number()).isEmpty();
                var treatment = treatments.of(child(story));
                assertThat(treatment.careSteps().facts()).hasSize(1);
                assertThat(Side.values()).noneMatch(side -> treatment.limb(side).isInCare());
                return null;
            });
        }
    }

    private static ChildId child(DemoStory story) {
        return new ChildId(DemoIds.of("child", story.number()));
    }

    private List<Film> filmsOf(DemoStory story) {
        return network.as(team.surgeon().value(), () -> films.of(child(story)));
    }

    private List<Reading> readingsOf(DemoStory story) {
        return network.as(team.surgeon().value(), () -> readings.ofChild(team.site(), child(story)));
    }
}
