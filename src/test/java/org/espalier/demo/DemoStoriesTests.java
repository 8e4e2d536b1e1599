package org.espalier.demo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.espalier.demo.drawn.DrawnFilm;
import org.espalier.science.alignment.AlignmentMeasurement;
import org.espalier.science.alignment.Quantity;
import org.espalier.science.quantity.Calibration;
import org.espalier.science.quantity.Side;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class DemoStoriesTests {

    private static final LocalDate FIRST_DAY = LocalDate.of(2026, 2, 28);

    static List<DemoStory> stories() {
        return DemoStories.all();
    }

    /** One child of each hospital is drawn; drawing takes a second or two. */
    static List<DemoStory> drawn() {
        return List.of(stories().get(0), stories().get(22), stories().get(44));
    }

    @Test
    void tellsOfSixtyChildrenAtThreeHospitals() {
        assertThat(stories()).hasSize(60);
        assertThat(stories().stream().map(DemoStory::hospital).distinct()).hasSize(3);
        assertThat(stories().stream().map(DemoStory::number).distinct()).hasSize(60);
        assertThat(stories().stream().map(DemoStory::familyName).distinct()).hasSize(60);
        assertThat(stories().stream().map(DemoStory::givenName).distinct()).hasSize(60);
        assertThat(EnumSet.allOf(DemoDiagnosis.class))
                .isEqualTo(EnumSet.copyOf(
                        stories().stream().map(DemoStory::diagnosis).toList()));
        assertThat(EnumSet.allOf(DemoDeed.What.class))
                .isEqualTo(EnumSet.copyOf(stories().stream()
                        .flatMap(story -> story.deeds().stream())
                        .map(DemoDeed::what)
                        .toList()));
    }

    @ParameterizedTest
    @MethodSource("stories")
    void tellsOfKneesThatCanBeAndOfDeedsBeforeToday(DemoStory story) {
        for (DemoVisit visit : story.visits()) {
            for (DemoKnee knee : List.of(visit.right(), visit.left())) {
                assertThat(knee.mLDFA().degrees()).isBetween(72.0, 102.0);
                assertThat(knee.mMPTA().degrees()).isBetween(64.0, 101.0);
            }
        }
        assertThat(story.deeds()).allMatch(deed -> deed.ageMonths() < story.ageNowMonths());
        assertThat(story.missed()).allMatch(age -> age < story.ageNowMonths());
    }

    @ParameterizedTest
    @MethodSource("stories")
    void goesForwardInTimeOnWeekdaysAndNeverBeyondToday(DemoStory story) {
        List<LocalDate> days = story.visits().stream()
                .map(visit -> story.dayOf(visit, FIRST_DAY))
                .toList();
        assertThat(days).hasSizeBetween(2, 8).isSorted().doesNotHaveDuplicates();
        assertThat(days.getLast()).isBefore(FIRST_DAY);
        assertThat(days)
                .noneMatch(day -> Set.of(DayOfWeek.SATURDAY, DayOfWeek.SUNDAY).contains(day.getDayOfWeek()));
    }

    @ParameterizedTest
    @ValueSource(strings = {"2026-01-01", "2026-02-28", "2028-02-29", "2028-12-31"})
    void endsEnoughCoursesInThisYearAndTheLastForCostsToTellOfThem(LocalDate firstDay) {
        for (DemoHospital hospital : DemoHospital.values()) {
            var days = EndedStories.all().stream()
                    .filter(story -> story.hospital() == hospital)
                    .map(story -> EndedStories.endOf(story, firstDay))
                    .toList();
            assertThat(days)
                    .filteredOn(day -> day.getYear() == firstDay.getYear())
                    .hasSize(EndedStories.A_YEAR);
            assertThat(days)
                    .filteredOn(day -> day.getYear() == firstDay.getYear() - 1)
                    .hasSize(EndedStories.A_YEAR);
            assertThat(days).allMatch(day -> !day.isAfter(firstDay));
        }
        assertThat(EndedStories.all())
                .allMatch(story -> story.deeds().stream().allMatch(deed -> story.dayAt(deed.ageMonths(), firstDay)
                        .isBefore(EndedStories.endOf(story, firstDay))));
    }

    @ParameterizedTest
    @MethodSource("drawn")
    void drawsTheAnglesItTells(DemoStory story) {
        DemoVisit visit = story.visits().getFirst();
        DrawnFilm film = DemoFilms.draw(story, visit).getFirst();
        for (Side side : Side.values()) {
            DemoKnee knee = side == Side.RIGHT ? visit.right() : visit.left();
            var numbers = AlignmentMeasurement.measure(side, film.landmarks(side), Calibration.none());
            assertThat(numbers.value(Quantity.MLDFA).orElseThrow())
                    .isCloseTo(knee.mLDFA().degrees(), within(1e-6));
            assertThat(numbers.value(Quantity.MMPTA).orElseThrow())
                    .isCloseTo(knee.mMPTA().degrees(), within(1e-6));
        }
    }

    @Test
    void writesTheSameFileForTheSameVisit() {
        DemoStory story = stories().getFirst();
        DemoVisit visit = story.visits().getFirst();
        byte[] once = DemoFilms.file(DemoFilms.draw(story, visit).getFirst(), story, visit, FIRST_DAY);
        byte[] again = DemoFilms.file(DemoFilms.draw(story, visit).getFirst(), story, visit, FIRST_DAY);
        assertThat(again).isEqualTo(once);
    }
}
