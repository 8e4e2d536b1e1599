package org.espalier.demo.drawn;

import java.awt.geom.Path2D;
import java.util.List;

/** The fibula, lateral of the tibia. */
final class FibulaShape {

    private final LimbGeometry geometry;
    private final BodyProportions body;
    private final double width;
    private final double length;

    FibulaShape(LimbGeometry geometry) {
        this.geometry = geometry;
        this.body = geometry.body();
        this.width = body.kneeWidthMm();
        this.length = geometry.limb().tibia().millimetres();
    }

    BonePart part() {
        double s = 0.078 * width;
        double top = 0.27 * width;
        double x = 0.42 * width;
        double low = 0.285 * width;
        Outline outline = new Outline()
                .add(1, x - 0.02 * width, top, x + s * 1.1, top + 0.1 * width, x + s * 1.25, top + 0.3 * width);
        outline.add(1, x + s * 0.9, top + 0.6 * width);
        outline.add(
                1,
                x - 0.02 * width + s,
                0.35 * length,
                x - 0.08 * width + s,
                0.6 * length,
                low + s,
                length - 0.7 * width);
        outline.add(1, low + s * 1.35, length - 0.15 * width, low + s * 1.7, length + 0.08 * width);
        outline.add(
                1,
                low + s * 1.0,
                length + 0.3 * width,
                low + s * 0.1,
                length + 0.27 * width,
                low - s * 0.5,
                length + 0.05 * width);
        outline.add(1, low - s * 0.9, length - 0.2 * width, low - s, length - 0.7 * width);
        outline.add(
                1, x - 0.08 * width - s, 0.6 * length, x - 0.02 * width - s, 0.35 * length, x - s, top + 0.6 * width);
        outline.add(1, x - s * 1.45, top + 0.3 * width, x - s * 1.4, top + 0.12 * width);
        Profile profile = Profile.of(
                new double[] {top, s * 1.2, s * 1.2, 0.01 * width, 0.2},
                new double[] {top + 0.5 * width, s, s, s * 0.4, 0.1},
                new double[] {0.5 * length, s, s, s * 0.5, 0.06},
                new double[] {length - 0.6 * width, s, s, s * 0.45, 0.08},
                new double[] {length - 0.1 * width, s * 1.3, s * 1.3, 0.01 * width, 0.2});
        return new BonePart(outline.closed(), null, geometry.tibia(), profile, physes(x, low));
    }

    private List<BonePart.Seam> physes(double x, double low) {
        double gap = body.physisMm();
        if (gap < 0.2) {
            return List.of();
        }
        double a = 0.27 * width + 0.16 * width;
        Path2D upper = new Outline()
                .add(1, x - 0.2 * width, a, x + 0.2 * width, a + 0.02 * width)
                .open();
        Path2D lower = new Outline()
                .add(1, low - 0.2 * width, length + 0.01 * width, low + 0.2 * width, length)
                .open();
        return List.of(BonePart.Seam.lucent(upper, gap, 0.45), BonePart.Seam.lucent(lower, gap, 0.45));
    }
}
