package org.espalier.reading;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.espalier.science.alignment.LandmarkGuide;
import org.espalier.science.quantity.Side;
import org.junit.jupiter.api.Test;

class GuideStepTests {

    @Test
    void asksForWhatTheAxesNeedOfBothLimbsBeforeAnythingElse() {
        var guide = GuideStep.of(ReadingSettings.ofFilm());
        assertThat(guide).hasSize(2 * LandmarkGuide.frontal().size());
        assertThat(guide.subList(0, 14)).noneMatch(GuideStep::optional);
        assertThat(guide.subList(14, guide.size())).allMatch(GuideStep::optional);
        assertThat(guide.getFirst().side()).isEqualTo(Side.RIGHT);
        assertThat(guide.getFirst().landmark()).isEqualTo("hip_centre");
        assertThat(guide.getFirst().kind()).isEqualTo("circle");
        assertThat(guide.getFirst().least()).isEqualTo(5);
    }

    @Test
    void beginsWithTheBallWhenItGivesTheScale() {
        var settings =
                ReadingSettings.ofFilm().withCalibration(CalibrationChoice.BALL).withLimbs(List.of(Side.LEFT));
        var guide = GuideStep.of(settings);
        assertThat(guide.getFirst().landmark()).isEqualTo("ball");
        assertThat(guide.getFirst().side()).isNull();
        assertThat(guide.subList(1, guide.size())).allMatch(step -> step.side() == Side.LEFT);
    }

    @Test
    void hasAShortNameAndASentenceForEveryStep() {
        assertThat(GuideStep.of(ReadingSettings.ofFilm().withCalibration(CalibrationChoice.BALL)))
                .allSatisfy(step -> {
                    assertThat(step.label()).hasSizeLessThan(45);
                    assertThat(step.sentence()).startsWith("Set ").endsWith(".");
                });
    }
}
