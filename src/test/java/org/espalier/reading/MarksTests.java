package org.espalier.reading;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.Collections;
import java.util.List;
import java.util.Set;
import org.espalier.science.alignment.Landmark;
import org.espalier.science.exposure.FilmConditions;
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
                .withTaken(Taken.but("\"flexionLeft\": 12").taken().withBall(25.4))
                .withFurther(Set.of(Landmark.Family.FURTHER))
                .withScrews(
                        List.of(ScrewSeen.asked(Side.LEFT, ScrewSeen.Plate.DISTAL_FEMUR, ScrewSeen.Screw.EPIPHYSIS)));
        var content = new DraftContent(settings, new Marks(List.of(POINT), edges), 7, null, null);
        var json = new JsonMapper();
        var text = json.writeValueAsString(content);
        assertThat(text).contains("\"points\":[[1.25,2.5]]").doesNotContain("openQuestion");
        assertThat(DraftContent.of(text, json)).isEqualTo(content);
    }

    @Test
    void bringsAlongADraftBegunWhenLessWasAsked() {
        var kept = """
                {"settings": {"limbs": ["RIGHT"], "calibration": "BALL", "ballDiameterMm": 25.0,
                  "positioning": {"stance": "HELD", "patella": "TURNED_IN", "kneeFlexion": 12}},
                 "marks": {"points": [], "edges": []}, "marksRevision": 3, "supersedes": null}
                """;
        var content = DraftContent.of(kept, new JsonMapper());
        assertThat(content.marksRevision()).isEqualTo(3);
        assertThat(content.secondOf()).isNull();
        var taken = content.settings().taken();
        assertThat(taken.stance()).isEqualTo(FilmConditions.Stance.STANDING_HELD);
        assertThat(taken.patella(Side.LEFT)).isEqualTo(FilmConditions.Patella.TURNED_IN);
        assertThat(taken.flexion(Side.RIGHT)).contains(12);
        assertThat(taken.ballMm()).isEqualTo(25.0);
        assertThat(taken.view()).isEqualTo(FilmConditions.View.NOT_RECORDED);
    }

    private static void assertRefused(List<PlacedPoint> points, List<EdgePoints> edges) {
        assertThatIllegalArgumentException().isThrownBy(() -> new Marks(points, edges));
    }
}
