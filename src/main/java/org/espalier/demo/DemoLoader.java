package org.espalier.demo;

import jakarta.annotation.PreDestroy;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.boot.context.event.ApplicationReadyEvent;
import org.springframework.context.annotation.Profile;
import org.springframework.context.event.EventListener;
import org.springframework.stereotype.Component;

/**
 * Fills the demonstration. The hospitals and their staff are there before anything is said; the children and their
 * films follow while the pages can already be looked at. Cut short, it goes on at the next start where it stopped.
 */
@Component
@Profile("demo")
class DemoLoader {

    private static final Logger LOG = LoggerFactory.getLogger(DemoLoader.class);

    private static final Duration PATIENCE = Duration.ofSeconds(10);

    private static final int MOST_VISITS = 8;

    private final DemoHouse house;
    private final DemoCourse course;
    private final DemoCare care;
    private final DemoStock stock;
    private final DemoCosts costs;
    private final DemoFamilies families;
    private final DemoComparisons comparisons;
    private final DemoOpinions opinions;
    private final Path folder;
    private final Clock clock;
    private volatile boolean closing;
    private volatile @Nullable Thread filling;

    DemoLoader(
            DemoHouse house,
            DemoCourse course,
            DemoCare care,
            DemoStock stock,
            DemoCosts costs,
            DemoFamilies families,
            DemoComparisons comparisons,
            DemoOpinions opinions,
            @Value("${espalier.data}") Path folder,
            Clock clock) {
        this.house = house;
        this.course = course;
        this.care = care;
        this.stock = stock;
        this.costs = costs;
        this.families = families;
        this.comparisons = comparisons;
        this.opinions = opinions;
        this.folder = folder;
        this.clock = clock;
    }

    @EventListener
    void start(ApplicationReadyEvent ready) {
        DemoState state = new DemoState(folder);
        LocalDate firstDay =
                LocalDate.parse(state.get("first-day", () -> LocalDate.ofInstant(clock.instant(), clock.getZone())
                        .toString()));
        Map<DemoHospital, DemoTeam> teams = house.open(state);
        String port = ready.getApplicationContext().getEnvironment().getRequiredProperty("local.server.port");
        new DemoWelcome(System.out).print(state, port);
        filling = Thread.ofPlatform()
                .name("demonstration")
                .priority(Thread.MIN_PRIORITY)
                .start(() -> fill(teams, firstDay, state));
    }

    /** Lets the step at hand come to its end before the database goes. */
    @PreDestroy
    void close() throws InterruptedException {
        closing = true;
        Thread running = filling;
        if (running != null) {
            running.join(PATIENCE);
        }
    }

    private void fill(Map<DemoHospital, DemoTeam> teams, LocalDate firstDay, DemoState state) {
        try {
            once(state, "stock", () -> stock.fill(teams, firstDay));
            once(state, "costs", () -> costs.set(teams, firstDay));
            begin(DemoStories.all(), teams, firstDay, state);
            film(DemoStories.all(), 0, teams, firstDay, state);
            end(EndedStories.all(), teams, firstDay, state);
            for (int back = 1; back < MOST_VISITS; back++) {
                film(DemoStories.all(), back, teams, firstDay, state);
            }
            follow(DemoStories.all(), teams, firstDay, state);
        } catch (RuntimeException e) {
            LOG.error("The demonstration could not be filled; start it again to go on", e);
        }
    }

    /** Lets the children come, and their care happen. */
    private void begin(
            List<DemoStory> stories, Map<DemoHospital, DemoTeam> teams, LocalDate firstDay, DemoState state) {
        teams.forEach((hospital, team) ->
                once(state, "letters." + hospital.code(), () -> families.tellWhere(hospital, team)));
        for (DemoStory story : stories) {
            course.register(story, team(teams, story), firstDay);
            once(state, "care." + story.number(), () -> care.tell(story, team(teams, story), firstDay));
            once(
                    state,
                    "family." + story.number(),
                    () -> families.tell(story, team(teams, story), firstDay, stories.indexOf(story)));
        }
    }

    /** Draws a film of each child: the newest, or one that is so many films back. */
    private void film(
            List<DemoStory> stories, int back, Map<DemoHospital, DemoTeam> teams, LocalDate firstDay, DemoState state) {
        for (DemoStory story : stories) {
            if (back < story.visits().size()) {
                DemoVisit visit = story.visits().reversed().get(back);
                visit(story, visit, team(teams, story), firstDay, state);
            }
        }
    }

    /** What follows from films. */
    private void follow(
            List<DemoStory> stories, Map<DemoHospital, DemoTeam> teams, LocalDate firstDay, DemoState state) {
        for (DemoStory story : stories) {
            if (story.visits().size() > 1) {
                once(state, "plan." + story.number(), () -> comparisons.tell(story, team(teams, story), firstDay));
            }
        }
        ask(stories, teams, firstDay, state);
        for (DemoStory story : DemoStories.mistyped()) {
            mistype(story, team(teams, story), firstDay, state);
        }
    }

    /**
     * Lets courses happen that are over, day by day with their films, so that what was foretold after one film is there
     * before the next.
     */
    private void end(List<DemoStory> stories, Map<DemoHospital, DemoTeam> teams, LocalDate firstDay, DemoState state) {
        SortedMap<LocalDate, List<Runnable>> days = new TreeMap<>();
        for (DemoStory story : stories) {
            DemoTeam team = team(teams, story);
            once(state, "begun." + story.number(), () -> course.register(story, team, firstDay));
            care.days(story, team, firstDay, visit -> visit(story, visit, team, firstDay, state))
                    .forEach((day, steps) ->
                            days.computeIfAbsent(day, one -> new ArrayList<>()).addAll(steps));
        }
        for (List<Runnable> steps : days.values()) {
            if (!closing && state.find("ended").isEmpty()) {
                steps.forEach(Runnable::run);
            }
        }
        for (DemoStory story : stories) {
            once(
                    state,
                    "ended." + story.number(),
                    () -> care.end(story, team(teams, story), EndedStories.endOf(story, firstDay)));
        }
        once(state, "ended", () -> {});
    }

    /** One child at one hospital is asked about at another. */
    private void ask(List<DemoStory> stories, Map<DemoHospital, DemoTeam> teams, LocalDate firstDay, DemoState state) {
        for (DemoStory story : stories) {
            var others = teams.entrySet().stream()
                    .filter(team -> team.getKey() != story.hospital())
                    .sorted(Map.Entry.comparingByKey())
                    .map(Map.Entry::getValue)
                    .toList();
            if (story.visits().size() > 1 && !others.isEmpty()) {
                once(state, "opinion", () -> opinions.tell(story, team(teams, story), others.getFirst(), firstDay));
                return;
            }
        }
    }

    private void mistype(DemoStory story, DemoTeam team, LocalDate firstDay, DemoState state) {
        once(state, "mistyped." + story.number(), () -> course.sendMistyped(story, team, firstDay));
    }

    private void visit(DemoStory story, DemoVisit visit, DemoTeam team, LocalDate firstDay, DemoState state) {
        once(
                state,
                "done." + story.number() + "." + visit.ageMonths(),
                () -> course.visit(story, visit, team, firstDay));
    }

    /** Does a step unless it was done, or the program is about to end. */
    private void once(DemoState state, String key, Runnable step) {
        if (!closing && state.find(key).isEmpty()) {
            step.run();
            state.put(key, "yes");
        }
    }

    private static DemoTeam team(Map<DemoHospital, DemoTeam> teams, DemoStory story) {
        return Optional.ofNullable(teams.get(story.hospital())).orElseThrow();
    }
}
