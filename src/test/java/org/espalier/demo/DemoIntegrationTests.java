package org.espalier.demo;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import org.espalier.IntegrationTest;
import org.espalier.access.PasswordService;
import org.espalier.access.Site;
import org.espalier.access.SiteService;
import org.espalier.access.SiteTokenService;
import org.espalier.access.StaffMember;
import org.espalier.access.StaffService;
import org.espalier.cost.TariffItem;
import org.espalier.cost.TariffService;
import org.espalier.film.FilmService;
import org.espalier.opinion.OpinionService;
import org.espalier.patient.ChildId;
import org.espalier.patient.PatientService;
import org.espalier.platform.Caller;
import org.espalier.platform.Callers;
import org.espalier.stock.ShelfSummary;
import org.espalier.stock.StockOverviewService;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.test.annotation.DirtiesContext;
import org.springframework.test.context.ActiveProfiles;

/** The demonstration as it starts by itself, with a database of its own. */
@IntegrationTest
@ActiveProfiles("demo")
@DirtiesContext
class DemoIntegrationTests {

    private static final Caller OPERATOR = new Caller.Staff(DemoIds.of("operator"));

    @Autowired
    private DemoHouse house;

    @Autowired
    private SiteService sites;

    @Autowired
    private StaffService staff;

    @Autowired
    private PasswordService passwords;

    @Autowired
    private SiteTokenService tokens;

    @Autowired
    private PatientService patients;

    @Autowired
    private FilmService films;

    @Autowired
    private DemoStock demoStock;

    @Autowired
    private DemoOpinions demoOpinions;

    @Autowired
    private OpinionService opinions;

    @Autowired
    private DemoCosts demoCosts;

    @Autowired
    private TariffService tariffs;

    @Autowired
    private StockOverviewService overview;

    @Value("${espalier.data}")
    private Path folder;

    private DemoState state;

    @BeforeEach
    void readWhatIsKept() {
        state = new DemoState(folder);
    }

    @Test
    void opensThreeHospitalsWithTwelvePeopleBeforeThePageIsUsed() {
        Callers.runAs(OPERATOR, () -> {
            assertThat(sites.all().stream().map(Site::code)).contains("HARB", "VALL", "MOOR");
            assertThat(people()).hasSize(12);
            assertThat(people().stream()
                            .flatMap(person -> person.memberships().stream())
                            .map(held -> held.role().name())
                            .collect(Collectors.toSet()))
                    .isEqualTo(Set.of(
                            "SURGEON",
                            "NURSE",
                            "RADIOGRAPHER",
                            "STOREKEEPER",
                            "COST_ADMINISTRATOR",
                            "PRIVACY_OFFICER",
                            "AUDITOR"));
            assertThat(tokens.all()).hasSize(1);
        });
    }

    private List<StaffMember> people() {
        return staff.all().stream()
                .filter(person -> !person.operator() && !person.login().startsWith("test-"))
                .toList();
    }

    @Test
    void opensAgainWithoutDoublingAnythingAndMendsAPasswordThatWasNotSettled() throws IOException {
        var before = house.open(state);
        Callers.runAs(OPERATOR, () -> staff.renewPassword(theOneCalled("pia").id()));
        assertThat(house.open(stateWithout("settled.pia"))).isEqualTo(before);
        Callers.runAs(OPERATOR, () -> {
            assertThat(people()).hasSize(12);
            assertThat(tokens.all()).hasSize(1);
            assertThat(signsInWith(theOneCalled("pia"))).isTrue();
        });
    }

    private StaffMember theOneCalled(String login) {
        return people().stream()
                .filter(person -> person.login().equals(login))
                .findFirst()
                .orElseThrow();
    }

    /** The state as a start leaves it that is killed before a thing is settled. */
    private DemoState stateWithout(String key) throws IOException {
        Path elsewhere = Files.createDirectories(folder.resolve("cut-short"));
        List<String> kept = Files.readAllLines(folder.resolve("demo.properties")).stream()
                .filter(line -> !line.startsWith(key))
                .toList();
        Files.write(elsewhere.resolve("demo.properties"), kept);
        return new DemoState(elsewhere);
    }

    /** Whether the printed password is theirs: it is changed with it, and changed back. */
    private boolean signsInWith(StaffMember person) {
        String printed = state.find(DemoHouse.password(person.login())).orElseThrow();
        return Callers.callAs(
                new Caller.Staff(person.id().value()),
                () -> passwords.change(printed, "another-quite-long-one").isEmpty()
                        && passwords.change("another-quite-long-one", printed).isEmpty());
    }

    @Test
    void fillsInTheBackgroundThroughTheSameDoors() throws InterruptedException {
        DemoStory first = DemoStories.all().getFirst();
        ChildId child = new ChildId(DemoIds.of("child", first.number()));
        DemoTeam team = Objects.requireNonNull(house.open(state).get(first.hospital()));
        Instant patience = Instant.now().plus(Duration.ofMinutes(2));
        Caller surgeon = new Caller.Staff(team.surgeon().value());
        while (Callers.callAs(surgeon, () -> films.of(child)).isEmpty()) {
            assertThat(Instant.now()).isBefore(patience);
            Thread.sleep(200);
        }
        assertThat(Callers.callAs(surgeon, () -> patients.open(child, "test"))).isPresent();
    }

    @Test
    void letsASurgeonAskAnotherWhoSeesNoName() throws InterruptedException {
        DemoStory story = DemoStories.all().get(1);
        var teams = house.open(state);
        DemoTeam team = Objects.requireNonNull(teams.get(story.hospital()));
        DemoTeam other = teams.entrySet().stream()
                .filter(one -> one.getKey() != story.hospital())
                .map(java.util.Map.Entry::getValue)
                .findFirst()
                .orElseThrow();
        Instant patience = Instant.now().plus(Duration.ofMinutes(2));
        Caller surgeon = new Caller.Staff(team.surgeon().value());
        ChildId child = new ChildId(DemoIds.of("child", story.number()));
        while (Callers.callAs(surgeon, () -> patients.open(child, "test")).isEmpty()) {
            assertThat(Instant.now()).isBefore(patience);
            Thread.sleep(200);
        }
        demoOpinions.tell(
                story, team, other, LocalDate.parse(state.find("first-day").orElseThrow()));
        var asked = Callers.callAs(new Caller.Staff(other.surgeon().value()), opinions::mine);
        assertThat(asked).anySatisfy(line -> assertThat(line.answered()).isTrue());
        assertThat(asked.toString()).doesNotContain(story.familyName(), story.number());
    }

    @Test
    void stocksTheShelvesOnce() {
        var teams = house.open(state);
        var firstDay = LocalDate.parse(state.find("first-day").orElseThrow());
        demoStock.fill(teams, firstDay);
        var harbour = Objects.requireNonNull(teams.get(DemoHospital.HARBOUR));
        var before = lying(harbour);
        demoStock.fill(teams, firstDay);
        assertThat(before).isPositive().isEqualTo(lying(harbour));
    }

    @Test
    void setsWhatEachThingCostsAndChangesIt() {
        var teams = house.open(state);
        var firstDay = LocalDate.parse(state.find("first-day").orElseThrow());
        demoCosts.set(teams, firstDay);
        demoCosts.set(teams, firstDay);
        var moor = Objects.requireNonNull(teams.get(DemoHospital.MOOR));
        var all = Callers.callAs(new Caller.Staff(moor.surgeon().value()), () -> tariffs.all(moor.site()));
        assertThat(all.stream().filter(one -> one.holdsOn(firstDay)))
                .hasSize(TariffItem.values().length)
                .allMatch(one -> one.data().source().contains("Invented"));
        assertThat(all.stream().filter(one -> one.holdsOn(firstDay.minusYears(2))))
                .hasSize(TariffItem.values().length);
    }

    private int lying(DemoTeam team) {
        return Callers.callAs(new Caller.Staff(team.surgeon().value()), () -> overview.shelves(team.site()).stream()
                .mapToInt(ShelfSummary::pieces)
                .sum());
    }
}
