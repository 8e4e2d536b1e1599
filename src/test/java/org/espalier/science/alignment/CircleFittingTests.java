package org.espalier.science.alignment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.IntStream;
import org.espalier.science.quantity.Calibration;
import org.espalier.science.quantity.Length;
import org.espalier.science.quantity.PixelPoint;
import org.espalier.science.quantity.PixelScale;
import org.espalier.science.quantity.PlanePoint;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresBuilder;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LevenbergMarquardtOptimizer;
import org.hipparchus.util.Pair;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CircleFittingTests {

    /** Printed to four decimals. */
    private static final double PRINTED = 0.00011;

    /** Six points of Gander, Golub and Strebel, BIT 1994;34:558. */
    private static final List<PlanePoint> GANDER = points(1, 7, 2, 6, 5, 8, 7, 7, 9, 5, 3, 7);

    /** Points about a circle of radius 22 at 100, 200 (constructed). */
    private static final List<PlanePoint> HEAD = points(
            121.05, 207.66, 116.62, 213.95, 111.10, 219.23, 103.73, 221.17, 96.13, 221.96, 88.95, 219.14, 83.45, 213.88,
            79.14, 207.59);

    /** The geometric result is printed in the paper; the algebraic one was recomputed from its points. */
    @Test
    void fitsThePublishedPoints() {
        assertThat(CircleFitting.start(GANDER).orElseThrow())
                .containsExactly(new double[] {4.6139, 2.7952, 4.8792}, within(PRINTED));
        CircleFit.Fitted fit = fitted(GANDER);
        assertThat(fit.centre().x()).isCloseTo(4.7398, within(PRINTED));
        assertThat(fit.centre().y()).isCloseTo(2.9835, within(PRINTED));
        assertThat(fit.radius()).isCloseTo(4.7142, within(PRINTED));
        assertThat(rootOfSquares(fit, 6)).isCloseTo(1.1080, within(PRINTED));
    }

    @Test
    void fitsTheEdgeOfAHead() {
        assertThat(CircleFitting.start(HEAD).orElseThrow())
                .containsExactly(new double[] {100.0523, 199.6235, 22.2700}, within(PRINTED));
        CircleFit.Fitted fit = fitted(HEAD);
        assertThat(fit.centre().x()).isCloseTo(100.0517, within(PRINTED));
        assertThat(fit.centre().y()).isCloseTo(199.6137, within(PRINTED));
        assertThat(fit.radius()).isCloseTo(22.2748, within(PRINTED));
        assertThat(rootOfSquares(fit, 8)).isCloseTo(0.8754, within(PRINTED));
    }

    /** The general least-squares optimiser of Hipparchus, started far off, comes to the same circle. */
    @Test
    void agreesWithAGeneralOptimiser() {
        var problem = new LeastSquaresBuilder()
                .model(at -> {
                    double[] c = at.toArray();
                    var residuals = new ArrayRealVector(HEAD.size());
                    var slopes = new Array2DRowRealMatrix(HEAD.size(), 3);
                    for (int i = 0; i < HEAD.size(); i++) {
                        double x = HEAD.get(i).x() - c[0];
                        double y = HEAD.get(i).y() - c[1];
                        double d = Math.hypot(x, y);
                        residuals.setEntry(i, d - c[2]);
                        slopes.setRow(i, new double[] {-x / d, -y / d, -1});
                    }
                    return new Pair<>(residuals, slopes);
                })
                .target(new double[HEAD.size()])
                .start(new double[] {90, 190, 10})
                .maxEvaluations(1000)
                .maxIterations(1000)
                .build();
        double[] best =
                new LevenbergMarquardtOptimizer().optimize(problem).getPoint().toArray();
        CircleFit.Fitted fit = fitted(HEAD);
        assertThat(new double[] {fit.centre().x(), fit.centre().y(), fit.radius()})
                .containsExactly(best, within(1e-6));
    }

    /** Cramér-Rao standard deviations for 12 points equally spaced on an arc (derived); printed to three decimals. */
    @ParameterizedTest
    @CsvSource({
        "270, 0.479, 0.375, 0.306",
        "180, 0.825, 0.392, 0.559",
        "150, 1.115, 0.430, 0.827",
        "120, 1.654, 0.500, 1.350",
        "90, 2.825, 0.630, 2.511",
        "60, 6.179, 0.907, 5.858"
    })
    void tellsHowAShortArcLeavesTheCentreLoose(double arc, double along, double across, double radius) {
        CircleFit.Fitted fit = fitted(onArc(12, arc));
        assertThat(fit.arc().degrees()).isCloseTo(arc, within(1e-6));
        assertThat(Math.max(fit.centreFactor(), fit.acrossFactor())).isCloseTo(along, within(0.0006));
        assertThat(Math.min(fit.centreFactor(), fit.acrossFactor())).isCloseTo(across, within(0.0006));
        assertThat(fit.radiusFactor()).isCloseTo(radius, within(0.0006));
        assertThat(fit.isArcShort()).isEqualTo(arc < 149.9);
    }

    @Test
    void tellsTheErrorOfTheWholeCircle() {
        CircleFit.Fitted fit = fitted(onArc(12, 330));
        assertThat(fit.arc().degrees()).isCloseTo(330, within(1e-6));
        assertThat(fit.centreFactor()).isCloseTo(0.408, within(0.0006));
        assertThat(fit.radiusFactor()).isCloseTo(0.289, within(0.0006));
        assertThat(fit.centreError().orElseThrow()).isCloseTo(0, within(1e-9));
    }

    @Test
    void meetsThreePointsExactlyAndClaimsNoError() {
        CircleFit.Fitted fit = fitted(points(10, 0, 0, 10, -10, 0));
        assertThat(fit.centre().distanceTo(new PlanePoint(0, 0))).isCloseTo(0, within(1e-9));
        assertThat(fit.radius()).isCloseTo(10, within(1e-9));
        assertThat(fit.centreError()).isEmpty();
        assertThat(fit.radiusError()).isEmpty();
    }

    @Test
    void saysWhyThereIsNoCircle() {
        assertThat(CircleFitting.fit(points(1, 1, 2, 2)))
                .isEqualTo(new CircleFit.NotFitted(CircleFit.Reason.TOO_FEW_POINTS));
        assertThat(CircleFitting.fit(points(1, 1, 2, 2, 1, 1)))
                .isEqualTo(new CircleFit.NotFitted(CircleFit.Reason.TOO_FEW_POINTS));
        assertThat(CircleFitting.fit(points(0, 1, 10, 3, 20, 5, 30, 7)))
                .isEqualTo(new CircleFit.NotFitted(CircleFit.Reason.POINTS_ON_A_LINE));
    }

    @Test
    void isRoundInThePlaneWhenPixelsAreNotSquare() {
        Calibration calibration = Calibration.ofDetectorPlane(PixelScale.of(0.1, 0.2));
        List<PixelPoint> edge =
                onArc(9, 200).stream().map(calibration::toPixels).toList();
        var fit = (CircleFit.Fitted) CircleFitting.fit(edge, calibration);
        assertThat(fit.radius()).isCloseTo(22, within(1e-9));
        assertThat(calibration.toPixels(fit.centre()).x()).isCloseTo(1000, within(1e-6));
        assertThat(calibration.toPixels(fit.centre()).y()).isCloseTo(1000, within(1e-6));
    }

    /** By arithmetic: a ball of 25.0 mm shown 183.4 pixels wide. */
    @Test
    void calibratesByABall() {
        List<PixelPoint> edge = IntStream.range(0, 16)
                .mapToObj(i ->
                        new PixelPoint(500 + 91.7 * Math.cos(i * Math.PI / 8), 700 + 91.7 * Math.sin(i * Math.PI / 8)))
                .toList();
        var fit = (CircleFit.Fitted) CircleFitting.fit(edge, Calibration.none());
        Calibration calibration = BallCalibration.of(fit, new Length(25), Calibration.none());
        assertThat(calibration.origin()).isEqualTo(Calibration.Origin.BALL);
        assertThat(calibration.scale().orElseThrow().millimetresPerPixelX()).isCloseTo(0.13631, within(0.000005));
        assertThat(calibration.ballDiameter()).contains(new Length(25));
    }

    @Test
    void keepsTheShapeOfPixelsWhenCalibratingByABall() {
        Calibration detector = Calibration.ofDetectorPlane(PixelScale.of(0.1, 0.2));
        List<PixelPoint> edge = onArc(12, 330).stream().map(detector::toPixels).toList();
        var fit = (CircleFit.Fitted) CircleFitting.fit(edge, detector);
        PixelScale scale =
                BallCalibration.of(fit, new Length(40), detector).scale().orElseThrow();
        assertThat(scale.millimetresPerPixelX()).isCloseTo(0.1 / 1.1, within(1e-9));
        assertThat(scale.millimetresPerPixelY()).isCloseTo(0.2 / 1.1, within(1e-9));
    }

    private static List<PlanePoint> onArc(int count, double arc) {
        return IntStream.range(0, count)
                .mapToDouble(i -> Math.toRadians(20 + arc * i / (count - 1)))
                .mapToObj(turn -> new PlanePoint(100 + 22 * Math.cos(turn), 200 + 22 * Math.sin(turn)))
                .toList();
    }

    private static List<PlanePoint> points(double... coordinates) {
        return IntStream.range(0, coordinates.length / 2)
                .mapToObj(i -> new PlanePoint(coordinates[2 * i], coordinates[2 * i + 1]))
                .toList();
    }

    private static CircleFit.Fitted fitted(List<PlanePoint> edge) {
        return (CircleFit.Fitted) CircleFitting.fit(edge);
    }

    private static double rootOfSquares(CircleFit.Fitted fit, int points) {
        return fit.edgeError().orElseThrow() * Math.sqrt(points - 3.0);
    }
}
