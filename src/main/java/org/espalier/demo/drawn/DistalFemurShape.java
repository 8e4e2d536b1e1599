package org.espalier.demo.drawn;

import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.util.List;

/** The femur below its metaphysis: the physis, the epiphysis with its condyles, and the patella in front. */
final class DistalFemurShape {

    private static final double[] PHYSIS = {
        -0.62, -0.02, -0.5, -0.012, -0.36, 0.016, -0.22, 0.004, -0.1, -0.016, 0, 0.03, 0.1, -0.014, 0.24, 0.006, 0.38,
        0.018, 0.5, -0.01, 0.62, -0.02
    };
    private static final double[] CONDYLES_UPWARD_MEDIAL = {-0.5, 0.66, -0.51, 0.5};
    private static final double[] CONDYLES = {
        -0.5, 0.42, -0.505, 0.33, -0.525, 0.24, -0.5, 0.13, -0.435, 0.045, -0.355, 0.009, -0.27, 0, -0.185, 0.009,
        -0.125, 0.036, -0.07, 0.086, 0, 0.106, 0.07, 0.086, 0.125, 0.036, 0.185, 0.009, 0.27, 0, 0.355, 0.009, 0.435,
        0.05, 0.49, 0.13, 0.5, 0.24, 0.49, 0.33, 0.485, 0.42
    };
    private static final double[] CONDYLES_UPWARD_LATERAL = {0.495, 0.5, 0.49, 0.66};

    private final LimbGeometry geometry;
    private final BodyProportions body;
    private final double width;

    DistalFemurShape(LimbGeometry geometry) {
        this.geometry = geometry;
        this.body = geometry.body();
        this.width = body.kneeWidthMm();
    }

    BonePart epiphysis() {
        double share = body.epiphysisShare();
        boolean full = share > 0.9;
        Outline outline = new Outline();
        if (full) {
            outline.add(geometry.condyles(), width * share, CONDYLES_UPWARD_MEDIAL);
        }
        outline.add(geometry.condyles(), width * share, full ? CONDYLES : nucleus());
        if (full) {
            outline.add(geometry.condyles(), width * share, CONDYLES_UPWARD_LATERAL);
        }
        Profile profile = Profile.constant(0.2 * width * share, 0.36 * width * share, 0.009 * width, 0.23);
        Path2D notch =
                new Outline().add(geometry.condyles(), width, 0, 0.1, 0, 0.24).open();
        List<BonePart.Seam> seams = full
                ? List.of(
                        BonePart.Seam.lucent(notch, 0.26 * width, 0.93),
                        BonePart.Seam.lucent(notch, 0.17 * width, 0.93))
                : List.of();
        return new BonePart(outline.closed(), below(), geometry.femur(), profile, seams);
    }

    /** The ossified centre of a small child: two soft lobes, flat above. */
    private double[] nucleus() {
        double top = (geometry.femoralEpiphysisMm() - body.physisMm()) / (width * body.epiphysisShare());
        return new double[] {
            -0.46,
            top * 0.75,
            -0.5,
            top * 0.5,
            -0.44,
            top * 0.2,
            -0.36,
            0.02,
            -0.27,
            0,
            -0.17,
            0.012,
            0,
            0.04,
            0.17,
            0.012,
            0.27,
            0,
            0.36,
            0.02,
            0.44,
            top * 0.2,
            0.5,
            top * 0.5,
            0.46,
            top * 0.75,
            0.3,
            top * 0.97,
            0,
            top,
            -0.3,
            top * 0.97
        };
    }

    /** Half of what is left out altogether: in a larger child the wavy physis is never quite free of bone. */
    private double keepGap() {
        return body.physisMm() * (body.epiphysisShare() > 0.9 ? 0.06 : 0.25);
    }

    private Path2D physisLine(double shift) {
        AffineTransform frame = geometry.condyles();
        frame.translate(0, geometry.femoralEpiphysisMm() + shift);
        return new Outline().add(frame, width, PHYSIS).open();
    }

    Path2D above() {
        Path2D keep = physisLine(keepGap());
        close(keep, 0.62, 30);
        return keep;
    }

    private Path2D below() {
        Path2D keep = physisLine(-keepGap());
        close(keep, 0.62, -2);
        return keep;
    }

    private void close(Path2D keep, double u, double v) {
        for (double side : new double[] {u, -u}) {
            Point2D corner = LimbGeometry.at(geometry.condyles(), Math.signum(side) * 20 * width, v * width);
            keep.lineTo(corner.getX(), corner.getY());
        }
        keep.closePath();
    }

    /** A dense metaphyseal line above the lucent physis, whose front and back edges do not quite cover each other. */
    List<BonePart.Seam> seams() {
        double gap = body.physisMm();
        if (gap < 0.2) {
            return List.of();
        }
        double line = 0.014 * width;
        return List.of(
                BonePart.Seam.dense(physisLine(gap / 2 + line), 2.2 * line, 0.02 * width),
                BonePart.Seam.dense(physisLine(gap / 2 + 0.6 * line), line, 0.02 * width),
                BonePart.Seam.lucent(physisLine(0), gap * 1.7, 0.74),
                BonePart.Seam.lucent(physisLine(0.15 * gap), gap * 0.9, 0.7));
    }

    BonePart patella() {
        double size = width * 0.29 * Math.min(1, 0.45 + 0.09 * (body.ageYears() - 4));
        AffineTransform frame = geometry.condyles();
        frame.translate(0.02 * width, 0.4 * width);
        Path2D outline = new Outline()
                .add(
                        frame, size, -0.95, 0.25, -0.6, 0.85, 0, 1.0, 0.65, 0.82, 0.98, 0.25, 0.8, -0.4, 0.35, -0.95,
                        -0.1, -1.08, -0.5, -0.8, -0.85, -0.35)
                .closed();
        return BonePart.whole(outline, geometry.femur(), Profile.constant(size * 0.6, size * 0.32, 0.004 * width, 0.2));
    }
}
