package org.espalier.reading;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.Collections;
import java.util.List;
import org.espalier.science.quantity.Side;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.json.JsonMapper;

class MarksTests {

    private static final PlacedPoint POINT = new PlacedPoint(Side.RIGHT, "head_top", 12.5, 30);

    @Test
    void refusesWhatNoHandCanHaveSet() {
        assertRefused(List.of(new PlacedPoint(Side.RIGHT, "elbow", 1, 1)), List.of());
        assertRefused(List.of(new PlacedPoint(Side.RIGHT, "head_top", Double.NaN, 1)), List.of());
        assertRefused(List.of(new PlacedPoint(Side.RIGHT, "head_top", 1, -1e9)), List.of());
        assertRefused(List.of(POINT, POINT), List.of());
        assertRefused(List.of(), List.of(new EdgePoints(Side.RIGHT, "plafond_medial", List.of())));
        assertRefused(List.of(), List.of(new EdgePoints(null, "hip_centre", List.of())));
        var edge = Collections.nCopies(201, new EdgePoints.EdgePoint(1, 1));
        assertRefused(List.of(), List.of(new EdgePoints(Side.RIGHT, "hip_centre", edge)));
    }

    @Test
    void comesBackFromJsonAsItWas() {
        var edges = List.of(
                new EdgePoints(Side.LEFT, "hip_centre", List.of(new EdgePoints.EdgePoint(1.25, 2.5))),
                new EdgePoints(null, "ball", List.of(new EdgePoints.EdgePoint(3, 4))));
        var settings = ReadingSettings.ofFilm()
                .withCalibration(CalibrationChoice.BALL)
                .withBallDiameter(25.4)
                .withPositioning(Positioning.NOT_RECORDED.withKneeFlexion(12));
        var content = new DraftContent(settings, new Marks(List.of(POINT), edges), 7, null);
        var json = new JsonMapper();
        var text = json.writeValueAsString(content);
        assertThat(text).contains("\"points\":[[1.25,2.5]]").doesNotContain("flexed");
        assertThat(json.readValue(text, DraftContent.class)).isEqualTo(content);
    }

    private static void assertRefused(List<PlacedPoint> points, List<EdgePoints> edges) {
        assertThatIllegalArgumentException().isThrownBy(() -> new Marks(points, edges));
    }
}
