package org.espalier.reading;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.espalier.reading.MeasureAnswer.Comparison;
import org.espalier.science.quantity.Calibration;
import org.espalier.science.quantity.PixelScale;
import org.espalier.science.quantity.Side;
import org.junit.jupiter.api.Test;

/** Conventions and published groups stand beside the numbers, each with its source; unread ones do not. */
class FollowingNumbersTests {

    private final List<Comparison> right = FollowingNumbers.of(FilmMeasurement.of(
            new ReferenceLimb(Side.RIGHT, 700, 0.2, 0.2).marks(),
            ReadingSettings.ofFilm().withLimbs(List.of(Side.RIGHT)),
            Calibration.ofTagGeometry(PixelScale.ofSquare(0.2))));

    /** The line passes the plateau by a quarter of it or more from the middle: a convention, its source told. */
    @Test
    void namesTheZoneWithItsSource() {
        assertThat(of("Right: zone of the axis at the knee").note()).contains("Müller", "unverified");
        assertThat(of("Right: zone of the axis at the knee").text()).matches("[−+][123] \\((medial|lateral)\\)");
    }

    /** 100 · tibial / (tibial + femoral) by hand for the reference limb, with either zero. */
    @Test
    void tellsTheTibiasShareByBothZeros() {
        double byRightAngles = share(90, 90);
        double byMeans = share(88, 87);
        assertThat(of("Right: tibia’s share of the varus (%DT)").text())
                .isEqualTo(words(byRightAngles) + " with right angles as zero, " + words(byMeans)
                        + " with the adult means 88° and 87° as zero");
    }

    @Test
    void saysNothingOfWhatWasNotRead() {
        assertThat(right).noneMatch(one -> one.label().contains("metaphyseal"));
    }

    private static double share(double femurZero, double tibiaZero) {
        double femur = ReferenceLimb.MLDFA - femurZero;
        double tibia = tibiaZero - ReferenceLimb.MMPTA;
        return femur >= 0 && tibia >= 0 && femur + tibia > 0 ? 100 * tibia / (femur + tibia) : -1;
    }

    private static String words(double percent) {
        return percent < 0 ? "not told" : Math.round(percent) + " %";
    }

    private Comparison of(String label) {
        return right.stream()
                .filter(one -> one.label().equals(label))
                .findFirst()
                .orElseThrow();
    }
}
