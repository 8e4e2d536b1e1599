package org.espalier.demo.drawn;

import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.util.ArrayList;
import java.util.List;

/** The tibia as a standing film shows it, with the fibula beside it. */
final class TibiaShape {

    private static final double[] PHYSIS = {
        -0.62, 0.01, -0.48, 0.002, -0.3, -0.012, -0.12, 0.006, 0, 0.016, 0.14, 0.004, 0.3, -0.01, 0.48, 0.004, 0.62,
        0.012
    };
    private static final double[] PLATEAU = {
        -0.5, 0.2, -0.505, 0.11, -0.485, 0.03, -0.455, 0, -0.4, 0.004, -0.28, 0.016, -0.16, 0.006, -0.105, -0.03, -0.07,
        -0.088, -0.03, -0.055, 0.02, -0.05, 0.06, -0.074, 0.1, -0.03, 0.16, 0.004, 0.28, 0.01, 0.4, 0.002, 0.455, 0,
        0.487, 0.03, 0.5, 0.1, 0.49, 0.2
    };

    private final LimbGeometry geometry;
    private final BodyProportions body;
    private final double width;
    private final double length;
    private final double axis;
    private final double shaft;
    private final double reach;

    TibiaShape(LimbGeometry geometry) {
        this.geometry = geometry;
        this.body = geometry.body();
        this.width = body.kneeWidthMm();
        this.length = geometry.limb().tibia().millimetres();
        this.axis = geometry.tibialAxisX();
        this.shaft = 0.155 * width;
        this.reach = Math.min(width, length / 3.6);
    }

    List<BonePart> parts() {
        List<BonePart> parts = new ArrayList<>();
        parts.add(new FibulaShape(geometry).part());
        parts.add(diaphysis());
        parts.add(proximalEpiphysis());
        parts.add(distalEpiphysis());
        return parts;
    }

    private BonePart diaphysis() {
        AffineTransform beaks = geometry.tibialBeaks();
        Outline outline = new Outline();
        outline.add(beaks, width, -0.3, -0.22, 0.3, -0.22, 0.47, -0.13);
        outline.add(beaks, width, 0.487, 0, 0.46, 0.07);
        double[] below = {0.55, 0.75, 1.0, 1.4};
        double[] half = {0.33, 0.265, 0.212, 0.175};
        List<Point2D> medial = new ArrayList<>();
        for (int i = 0; i < below.length; i++) {
            outline.add(new Point2D.Double(axis + half[i] * width, below[i] * reach));
            medial.add(new Point2D.Double(axis - half[i] * width * 0.97, below[i] * reach));
        }
        for (double share : new double[] {0.5, 0.65, 0.78}) {
            double s = shaft * (1.06 - 0.2 * share);
            outline.add(new Point2D.Double(axis + s, share * length));
            medial.add(new Point2D.Double(axis - s, share * length));
        }
        double part = reach / width;
        outline.add(geometry.plafond(), width, 0.17, 0.62 * part, 0.215, 0.36 * part, 0.255, 0.2 * part);
        outline.add(geometry.plafond(), width, 0.25, 0.06, 0.1, 0.02, -0.2, 0.02);
        outline.add(geometry.plafond(), width, -0.29, 0.06, -0.3, 0.2 * part, -0.25, 0.36 * part, -0.19, 0.62 * part);
        medial.reversed().forEach(outline::add);
        outline.add(beaks, width, -0.46, 0.07, -0.487, 0, -0.47, -0.13);
        Path2D keep = closed(physisLine(keepGap()), geometry.tibialPhysis(), 8);
        clipAnkle(keep);
        return new BonePart(outline.closed(), keep, geometry.tibia(), profile(), seams());
    }

    /** The diaphysis ends at the distal physis. */
    private void clipAnkle(Path2D keep) {
        double at = length - 0.19 * width - body.physisMm() * 0.3;
        keep.reset();
        keep.append(physisLine(keepGap()), false);
        keep.lineTo(20 * width, at);
        keep.lineTo(-20 * width, at);
        keep.closePath();
    }

    private Profile profile() {
        double wall = shaft * 0.42;
        return Profile.of(
                new double[] {0, 0.26 * width, 0.3 * width, 0.007 * width, 0.22},
                new double[] {0.35 * reach, 0.26 * width, 0.28 * width, 0.008 * width, 0.2},
                new double[] {0.7 * reach, 0.24 * width, 0.22 * width, wall * 0.45, 0.13},
                new double[] {1.15 * reach, 0.19 * width, 0.18 * width, wall * 0.85, 0.07},
                new double[] {0.5 * length, shaft, shaft * 1.15, wall, 0.05},
                new double[] {0.74 * length, shaft * 0.92, shaft, wall * 0.9, 0.06},
                new double[] {length - 0.6 * reach, 0.18 * width, 0.17 * width, wall * 0.4, 0.13},
                new double[] {length - 0.25 * reach, 0.2 * width, 0.21 * width, 0.008 * width, 0.2},
                new double[] {length, 0.2 * width, 0.22 * width, 0.008 * width, 0.22});
    }

    private BonePart proximalEpiphysis() {
        double share = body.epiphysisShare();
        boolean full = share > 0.9;
        double size = width * share;
        Outline outline = new Outline();
        outline.add(geometry.plateau(), size, full ? PLATEAU : nucleus());
        if (full) {
            outline.add(geometry.plateau(), size, 0.475, 0.34, 0.45, 0.46, -0.45, 0.46, -0.475, 0.34);
        }
        Path2D keep = closed(physisLine(-keepGap()), geometry.tibialPhysis(), -3);
        return new BonePart(
                outline.closed(),
                keep,
                geometry.tibia(),
                Profile.constant(0.16 * size, 0.31 * size, 0.009 * width, 0.24),
                List.of());
    }

    private double[] nucleus() {
        double deep = (geometry.tibialEpiphysisMm() - body.physisMm()) / (width * body.epiphysisShare());
        return new double[] {
            -0.5,
            deep * 0.45,
            -0.455,
            0,
            -0.3,
            0.0,
            -0.1,
            -0.01,
            0,
            -0.025,
            0.1,
            -0.01,
            0.3,
            0,
            0.455,
            0,
            0.5,
            deep * 0.45,
            0.42,
            deep * 0.85,
            0.2,
            deep,
            -0.2,
            deep,
            -0.42,
            deep * 0.85
        };
    }

    private double keepGap() {
        return body.physisMm() * (body.epiphysisShare() > 0.9 ? 0.06 : 0.25);
    }

    private Path2D physisLine(double shift) {
        AffineTransform frame = geometry.tibialPhysis();
        frame.translate(0, shift);
        return new Outline().add(frame, width, PHYSIS).open();
    }

    private Path2D closed(Path2D line, AffineTransform frame, double v) {
        for (double side : new double[] {20, -20}) {
            Point2D corner = LimbGeometry.at(frame, side * width, v * width);
            line.lineTo(corner.getX(), corner.getY());
        }
        line.closePath();
        return line;
    }

    private List<BonePart.Seam> seams() {
        double gap = body.physisMm();
        if (gap < 0.2) {
            return List.of();
        }
        double line = 0.013 * width;
        return List.of(
                BonePart.Seam.dense(physisLine(gap / 2 + line), 2.2 * line, 0.02 * width),
                BonePart.Seam.dense(physisLine(gap / 2 + 0.6 * line), line, 0.02 * width),
                BonePart.Seam.lucent(physisLine(0), gap * 1.7, 0.74),
                BonePart.Seam.lucent(physisLine(-0.15 * gap), gap * 0.9, 0.7));
    }

    private Path2D ankleEnd() {
        return new Outline()
                .add(
                        geometry.plafond(),
                        width,
                        0.255,
                        0.3,
                        0.255,
                        0.16,
                        0.25,
                        0.05,
                        0.225,
                        0.006,
                        0.2,
                        0,
                        0.05,
                        0.004,
                        -0.1,
                        0.002,
                        -0.2,
                        0,
                        -0.226,
                        -0.03,
                        -0.232,
                        -0.1,
                        -0.262,
                        -0.175,
                        -0.31,
                        -0.165,
                        -0.34,
                        -0.08,
                        -0.335,
                        0.03,
                        -0.31,
                        0.13,
                        -0.3,
                        0.3)
                .closed();
    }

    private BonePart distalEpiphysis() {
        double top = 0.19 * width - body.physisMm() * 0.3;
        Path2D keep = new Outline()
                .add(geometry.plafond(), 1, -width, top, width, top, width, -width, -width, -width)
                .polygon();
        return new BonePart(
                ankleEnd(),
                keep,
                geometry.tibia(),
                Profile.constant(0.12 * width, 0.2 * width, 0.009 * width, 0.24),
                List.of());
    }
}
