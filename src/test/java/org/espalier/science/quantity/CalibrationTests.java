package org.espalier.science.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.Optional;
import org.junit.jupiter.api.Test;

class CalibrationTests {

    @Test
    void bringsPixelsToThePlaneAndBackWithItsOwnScaleAcrossAndDown() {
        Calibration calibration = Calibration.ofTagGeometry(PixelScale.of(0.125, 0.25));
        assertThat(calibration.toPlane(new PixelPoint(80, 40))).isEqualTo(new PlanePoint(10, 10));
        assertThat(calibration.toPixels(new PlanePoint(10, 10))).isEqualTo(new PixelPoint(80, 40));
    }

    @Test
    void countsPixelsAsSquareWhenNoScaleIsKnown() {
        assertThat(Calibration.none().toPlane(new PixelPoint(80, 40))).isEqualTo(new PlanePoint(80, 40));
        assertThat(Calibration.none().toPixels(new PlanePoint(80, 40))).isEqualTo(new PixelPoint(80, 40));
        assertThat(Calibration.none().isInMillimetres()).isFalse();
    }

    @Test
    void refusesAScaleThatDoesNotFitItsOrigin() {
        assertThatIllegalArgumentException()
                .isThrownBy(
                        () -> new Calibration(Calibration.Origin.DETECTOR_PLANE, Optional.empty(), Optional.empty()));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Calibration(
                        Calibration.Origin.NONE, Optional.of(PixelScale.ofSquare(1)), Optional.empty()));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Calibration(
                        Calibration.Origin.BALL, Optional.of(PixelScale.ofSquare(1)), Optional.empty()));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Calibration.ofBall(PixelScale.ofSquare(1), new Length(0)));
    }

    @Test
    void refusesPixelsWithoutSize() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> PixelScale.of(0, 0.1))
                .withMessageContaining("0.0");
        assertThatIllegalArgumentException().isThrownBy(() -> PixelScale.of(0.1, Double.NaN));
        assertThatIllegalArgumentException().isThrownBy(() -> PixelScale.of(Double.POSITIVE_INFINITY, 0.1));
    }
}
