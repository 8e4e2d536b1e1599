package org.espalier.science.alignment;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import org.espalier.science.quantity.Calibration;
import org.espalier.science.quantity.PixelPoint;
import org.espalier.science.quantity.Side;
import org.junit.jupiter.api.Test;

class LandmarkGuideTests {

    @Test
    void hasOneStepForEveryLandmarkFromTheHipDown() {
        assertThat(LandmarkGuide.frontal())
                .extracting(LandmarkGuide.Step::landmark)
                .containsExactlyElementsOf(Arrays.stream(Landmark.values())
                        .filter(landmark -> landmark.family() == Landmark.Family.FRONTAL)
                        .toList());
        List<LandmarkGuide.Region> regions =
                LandmarkGuide.frontal().stream().map(LandmarkGuide.Step::region).toList();
        assertThat(regions).isSorted();
        assertThat(regions).contains(LandmarkGuide.Region.values());
    }

    @Test
    void asksForEveryLandmarkInTheListOfItsFamily() {
        assertThat(Arrays.stream(Landmark.Family.values()).flatMap(family -> LandmarkGuide.steps(family).stream()))
                .extracting(LandmarkGuide.Step::landmark)
                .containsExactlyInAnyOrder(Landmark.values());
    }

    @Test
    void coreLandmarksGiveTheAxesAndJointLines() {
        LimbLandmarks core = LimbLandmarks.none();
        int row = 0;
        for (LandmarkGuide.Step step : LandmarkGuide.frontal()) {
            if (step.isCore()) {
                core = core.with(step.landmark(), new PixelPoint(row % 2 * 60, row++ * 100));
            }
        }
        LimbNumbers numbers = AlignmentMeasurement.measure(Side.LEFT, core, Calibration.none());
        assertThat(List.of(Quantity.MLDFA, Quantity.MMPTA, Quantity.LDTA, Quantity.JLCA, Quantity.HKA, Quantity.WBL))
                .allSatisfy(quantity -> assertThat(numbers.value(quantity)).isPresent());
    }

    @Test
    void goesOnWithTheFirstLandmarkThatIsNotSet() {
        LimbLandmarks begun = LimbLandmarks.none().with(Landmark.HIP_CENTRE, new PixelPoint(1, 1));
        assertThat(LandmarkGuide.nextOf(begun).orElseThrow().landmark()).isEqualTo(Landmark.HEAD_TOP);
        assertThat(LandmarkGuide.nextOf(begun).orElseThrow().key()).isEqualTo("landmark.head_top");
        assertThat(LandmarkGuide.nextOf(LimbLandmarks.none()).orElseThrow().placing())
                .isEqualTo(LandmarkGuide.Placing.EDGE_OF_CIRCLE);
    }
}
