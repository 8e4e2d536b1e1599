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

class DemoStoriesTests {

    private static final LocalDate FIRST_DAY = LocalDate.of(2026, 2, 28);

    static List<DemoStory> stories() {
        return DemoStories.all();
    }

    @Test
    void tellsOfTenChildrenAtTwoHospitals() {
        assertThat(stories()).hasSize(10);
        assertThat(stories().stream().map(DemoStory::hospital).distinct()).hasSize(2);
        assertThat(stories().stream().map(DemoStory::number).distinct()).hasSize(10);
        assertThat(stories().stream().map(DemoStory::familyName).distinct()).hasSize(10);
        assertThat(EnumSet.allOf(DemoDiagnosis.class))
                .isEqualTo(EnumSet.copyOf(
                        stories().stream().map(DemoStory::diagnosis).toList()));
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
    @MethodSource("stories")
    void drawsTheAnglesItTells(DemoStory story) {
        DemoVisit visit = story.visits().getFirst();
        DrawnFilm film = DemoFilms.draw(story, visit);
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
        byte[] once = DemoFilms.file(DemoFilms.draw(story, visit), story, visit, FIRST_DAY);
        byte[] again = DemoFilms.file(DemoFilms.draw(story, visit), story, visit, FIRST_DAY);
        assertThat(again).isEqualTo(once);
    }
}
