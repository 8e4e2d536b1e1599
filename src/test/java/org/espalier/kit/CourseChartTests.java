package org.espalier.kit;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import org.espalier.science.quantity.Side;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;

class CourseChartTests {

    private static final LocalDate DAY = LocalDate.of(2025, 7, 14);

    @Test
    void givesTheBrowserIsoDatesAndTheContractsWords() {
        var point = new CourseModel.Point(
                DAY, 94.1, 2.1, "all of it", "94.1° varus", CourseModel.Kind.SIGNED, false, false, null, null);
        var quantity = new CourseModel.Quantity(
                "mLDFA", "mLDFA", "femur", "°", 80, 100, CourseModel.Varus.HIGHER, null, null, List.of(), null);
        var track = new CourseModel.Track("mLDFA right", "mLDFA", Side.RIGHT, List.of(point));
        var chart = new CourseChart();

        var plate = new CourseModel.Mark(DAY, null, CourseModel.Look.PLATE, "plate since", null, null);
        var row = new CourseModel.Row("plates", "Plates, right", Side.RIGHT, List.of(plate));
        var spread = new CourseModel.Spread(DAY, 80, 85, 87, 89, 94);
        var fan = new CourseModel.Fan(track.id(), "where it goes", List.of(spread));

        chart.show(new CourseModel(
                DAY, DAY, DAY, DAY, List.of(quantity), List.of(track), List.of(fan), List.of(row), List.of()));

        var model = (JsonNode) chart.getElement().getPropertyRaw("model");
        assertThat(model.at("/birth").asString()).isEqualTo("2025-07-14");
        assertThat(model.at("/quantities/0/varus").asString()).isEqualTo("HIGHER");
        assertThat(model.at("/tracks/0/side").asString()).isEqualTo("RIGHT");
        assertThat(model.at("/tracks/0/points/0/kind").asString()).isEqualTo("SIGNED");
        assertThat(model.at("/tracks/0/points/0/value").asDouble()).isEqualTo(94.1);
        assertThat(model.at("/rows/0/marks/0/look").asString()).isEqualTo("PLATE");
        assertThat(model.at("/rows/0/marks/0/date").asString()).isEqualTo("2025-07-14");
        assertThat(model.at("/fans/0/days/0/low90").asDouble()).isEqualTo(80);
    }
}
