package org.espalier.demo.drawn;

import java.awt.geom.AffineTransform;
import java.awt.geom.Point2D;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.espalier.science.alignment.Landmark;
import org.espalier.science.alignment.LimbLandmarks;
import org.espalier.science.quantity.Length;
import org.espalier.science.quantity.PixelPoint;
import org.espalier.science.quantity.Side;

/** Stands the legs, lets the rays through them and develops the film. */
final class FilmPainter {

    private static final double MUSCLE_PER_MM = 0.0205;
    private static final double FAT_PER_MM = 0.0135;
    private static final double CORTEX_PER_MM = 0.05;
    private static final double QUANTA = 0.011;

    private final FilmOrder order;
    private final BodyProportions body;
    private final LimbGeometry right;
    private final LimbGeometry left;
    private final SoftTissue soft;
    private final double mmPerPixel;
    private final double edgeMm;
    private final int width;
    private final int height;
    private final AffineTransform toPixels;

    FilmPainter(FilmOrder order) {
        this.order = order;
        this.body = order.body();
        double kneeHalf = SoftTissue.kneeHalf(body, order.plump());
        LimbGeometry standingRight = LimbGeometry.stand(order.right(), body, kneeHalf);
        LimbGeometry standingLeft = LimbGeometry.stand(order.left(), body, kneeHalf);
        double floor = Math.max(floor(standingRight), floor(standingLeft));
        this.right = standingRight.lowered(floor - floor(standingRight));
        this.left = standingLeft.lowered(floor - floor(standingLeft));
        this.soft = new SoftTissue(right, left, order.plump());
        this.mmPerPixel = order.sheet().pixel().millimetres() / order.sheet().magnification();
        double top = -1.3 * body.hipHalfMm();
        double half = halfWidth();
        double bottom = floor + 0.53 * body.kneeWidthMm() + Caption.stripMm(2 * half);
        this.edgeMm = order.isOnSheet(Side.RIGHT) ? -half : 0;
        this.width = (int) Math.ceil((order.isOnSheet(Side.LEFT) ? half - edgeMm : -edgeMm) / mmPerPixel);
        this.height = (int) Math.ceil((bottom - top) / mmPerPixel);
        this.toPixels = AffineTransform.getScaleInstance(1 / mmPerPixel, 1 / mmPerPixel);
        toPixels.translate(-edgeMm, -top);
    }

    private static double floor(LimbGeometry leg) {
        return LimbGeometry.at(leg.tibia(), 0, leg.limb().tibia().millimetres()).getY();
    }

    private double halfWidth() {
        double knees = 0;
        for (LimbGeometry leg : List.of(right, left)) {
            Point2D knee = LimbGeometry.at(leg.tibia(), 0.6 * body.kneeWidthMm(), 0);
            Point2D ankle = LimbGeometry.at(
                    leg.tibia(), 0.6 * body.kneeWidthMm(), leg.limb().tibia().millimetres());
            knees = Math.max(knees, Math.max(Math.abs(knee.getX()), Math.abs(ankle.getX())));
        }
        return Math.max(2.15 * body.hipHalfMm() * (1 + 0.2 * (order.plump() - 1)), knees + 50);
    }

    DrawnFilm paint() {
        BoneCanvas canvas = new BoneCanvas(width, height, toPixels, mmPerPixel, (int) order.seed());
        new PelvisShape(body, hip(right), hip(left)).parts().forEach(canvas::paint);
        for (LimbGeometry leg : List.of(right, left)) {
            new FemurShape(leg).parts().forEach(canvas::paint);
            new TibiaShape(leg).parts().forEach(canvas::paint);
            new FootShape(leg).parts().forEach(canvas::paint);
            MetalShape.plates(leg).forEach(canvas::paint);
            if (order.contrast()) {
                canvas.paint(MetalShape.contrast(leg));
            }
        }
        Point2D ballCentre = ballCentre();
        double ballRadius = order.sheet().ball().millimetres()
                / 2
                * order.sheet().ballMagnification()
                / order.sheet().magnification();
        canvas.paint(MetalShape.ball(ballCentre, ballRadius));
        markers(canvas);
        float[] loss = develop(canvas.bone());
        short[] stored = ToneCurve.stored(loss, width, height, mmPerPixel);
        new Caption(stored, width, height, mmPerPixel).write(DrawnFilm.MARK);
        return film(stored, ToneCurve.window(stored), ballCentre, ballRadius);
    }

    private static Point2D hip(LimbGeometry leg) {
        return LimbGeometry.at(leg.femur(), 0, 0);
    }

    private Point2D ballCentre() {
        boolean onLeft = order.isOnSheet(Side.LEFT);
        Point2D knee = LimbGeometry.at((onLeft ? left : right).tibia(), 0, 0);
        double out = SoftTissue.kneeHalf(body, order.plump()) + 20;
        return new Point2D.Double(knee.getX() + (onLeft ? out : -out), knee.getY() - 4);
    }

    private void markers(BoneCanvas canvas) {
        double size = Math.clamp(0.22 * body.hipHalfMm(), 11, 18);
        double y = 0.95 * body.hipHalfMm();
        if (order.isOnSheet(Side.RIGHT)) {
            canvas.paint(MetalShape.lead("R", new Point2D.Double(edgeMm + 0.6 * size, y), size));
        }
        if (order.isOnSheet(Side.LEFT)) {
            double outer = edgeMm + width * mmPerPixel;
            canvas.paint(MetalShape.lead("L", new Point2D.Double(outer - 1.4 * size, y), size));
        }
    }

    /** Sums what muscle, fat and bone take from each ray, with the grain of the quanta that are left. */
    private float[] develop(float[] bone) {
        float[] loss = new float[bone.length];
        SoftTissue.Path path = new SoftTissue.Path();
        int seed = (int) order.seed();
        BowelGas bowel = new BowelGas(body.hipHalfMm(), seed);
        double topMm = -toPixels.getTranslateY() * mmPerPixel;
        for (int row = 0; row < height; row++) {
            double y = topMm + (row + 0.5) * mmPerPixel;
            List<SoftTissue.Slice> slices = soft.at(y);
            for (int column = 0; column < width; column++) {
                int i = row * width + column;
                double x = (column + 0.5) * mmPerPixel + edgeMm;
                SoftTissue.cross(slices, x, path);
                path.muscle -= (float) bowel.gas(x, y, path.muscle);
                double flesh = path.muscle * MUSCLE_PER_MM + path.fat * FAT_PER_MM;
                if (flesh > 0) {
                    flesh *= 1
                            + 0.02 * Grain.hills(x / 11, y / 48, seed + 5)
                            + 0.012 * Grain.hills(x / 3.5, y / 16, seed + 6);
                }
                double sum = flesh + Math.min(5, bone[i] * CORTEX_PER_MM);
                loss[i] = (float) sum;
            }
        }
        return Blur.withQuanta(loss, width, height, 0.22 / order.sheet().pixel().millimetres(), QUANTA, order.seed());
    }

    private DrawnFilm film(short[] stored, ToneCurve.Window window, Point2D ballCentre, double ballRadius) {
        DrawnFilm.Ball ball = new DrawnFilm.Ball(
                pixel(ballCentre), 2 * ballRadius / mmPerPixel, order.sheet().ball());
        return new DrawnFilm(
                width,
                height,
                stored,
                window.centre(),
                window.width(),
                order.sheet().pixel(),
                order.sheet().magnification(),
                ball,
                new Length(body.headRadiusMm()),
                order.isOnSheet(Side.RIGHT) ? pixels(right) : LimbLandmarks.none(),
                order.isOnSheet(Side.LEFT) ? pixels(left) : LimbLandmarks.none(),
                order.contrast());
    }

    private LimbLandmarks pixels(LimbGeometry leg) {
        Map<Landmark, PixelPoint> found = new EnumMap<>(Landmark.class);
        leg.landmarks().forEach((landmark, point) -> found.put(landmark, pixel(point)));
        return new LimbLandmarks(found);
    }

    private PixelPoint pixel(Point2D bodyPoint) {
        Point2D p = toPixels.transform(bodyPoint, null);
        return new PixelPoint(p.getX(), p.getY());
    }
}
