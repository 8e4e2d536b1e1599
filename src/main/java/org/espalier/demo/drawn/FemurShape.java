package org.espalier.demo.drawn;

import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.util.ArrayList;
import java.util.List;

/** The femur as a standing film shows it: shaft, neck and trochanter, head, distal epiphysis, patella. */
final class FemurShape {

    private final LimbGeometry geometry;
    private final BodyProportions body;
    private final double width;
    private final double shaft;
    private final double length;
    private final double reach;
    private final double neckMm;
    private final Point2D neckBase;
    private final AffineTransform neck;
    private final DistalFemurShape knee;

    FemurShape(LimbGeometry geometry) {
        this.geometry = geometry;
        this.body = geometry.body();
        this.width = body.kneeWidthMm();
        this.shaft = 0.17 * width;
        this.length = geometry.limb().femur().millimetres();
        this.reach = Math.min(width, length / 4.1);
        this.neckMm = Math.max(0.19 * width, 0.7 * body.headRadiusMm());
        Point2D beside = geometry.femoralAxis(length);
        this.neckBase = geometry.femoralAxis(length - 0.95 * beside.getX());
        this.neck = neckFrame();
        this.knee = new DistalFemurShape(geometry);
    }

    /** Origin at the head, y along the neck toward the shaft, x to the upper lateral side. */
    private AffineTransform neckFrame() {
        double reach = Math.hypot(neckBase.getX(), neckBase.getY());
        double ux = neckBase.getX() / reach;
        double uy = neckBase.getY() / reach;
        return new AffineTransform(uy, -ux, ux, uy, 0, 0);
    }

    List<BonePart> parts() {
        List<BonePart> parts = new ArrayList<>();
        parts.add(diaphysis());
        parts.add(knee.epiphysis());
        parts.add(head());
        if (body.isPatellaOssified()) {
            parts.add(knee.patella());
        }
        return parts;
    }

    private BonePart diaphysis() {
        Outline outline = new Outline();
        double[] above = {0.44, 0.5, 0.6, 0.74, 0.94, 1.2, 1.55};
        double[] half = {0.494, 0.478, 0.43, 0.36, 0.292, 0.238, 0.2};
        List<Point2D> medial = new ArrayList<>();
        List<Point2D> lateral = new ArrayList<>();
        double rise = geometry.femoralEpiphysisMm() - 0.37 * width;
        for (int i = 0; i < above.length; i++) {
            medial.add(wall(0.44 * width + (above[i] - 0.44) * reach + rise, -half[i] * width));
            lateral.add(wall(0.44 * width + (above[i] - 0.44) * reach + rise, half[i] * width));
        }
        double top = length - neckBase.getY() > 0 ? axisHeight(neckBase) : length;
        double low = 0.44 * width + 1.11 * reach + rise;
        for (double share : new double[] {0.2, 0.45, 0.7}) {
            medial.add(wall(low + share * (top - 1.5 * neckMm - low), -shaft * (1.03 + 0.03 * share)));
            lateral.add(wall(low + share * (top - 1.5 * neckMm - low), shaft * (1.03 + 0.05 * share)));
        }
        outline.add(geometry.condyles(), width, 0.3, 0.1, -0.3, 0.1, -0.47, 0.25);
        medial.forEach(outline::add);
        proximal(outline, top);
        lateral.reversed().forEach(outline::add);
        outline.add(geometry.condyles(), width, 0.47, 0.25);
        return new BonePart(outline.closed(), knee.above(), geometry.femur(), diaphysisProfile(top), knee.seams());
    }

    private double axisHeight(Point2D onAxis) {
        Point2D base = geometry.femoralAxis(0);
        return onAxis.distance(base);
    }

    /** A point beside the shaft; near the knee the axis bends into the direction of the joint line. */
    private Point2D wall(double aboveKnee, double lateral) {
        Point2D low = LimbGeometry.at(geometry.condyles(), lateral, aboveKnee);
        Point2D axis = geometry.femoralAxis(aboveKnee);
        double lean = Math.toRadians(geometry.limb().shaftLean().degrees());
        Point2D high =
                new Point2D.Double(axis.getX() + lateral * Math.cos(lean), axis.getY() + lateral * Math.sin(lean));
        double share = Math.clamp((aboveKnee / width - 0.45) / 1.3, 0, 1);
        double weight = share * share * (3 - 2 * share);
        return new Point2D.Double(
                low.getX() + weight * (high.getX() - low.getX()), low.getY() + weight * (high.getY() - low.getY()));
    }

    /** From the medial shaft over lesser trochanter, neck and greater trochanter to the lateral shaft. */
    private void proximal(Outline outline, double top) {
        double n = neckMm;
        double toBase = Math.hypot(neckBase.getX(), neckBase.getY());
        double cut = capitalPhysis();
        double r = body.headRadiusMm();
        double end = Math.max(0.95 * n, 0.98 * Math.sqrt(Math.max(0, r * r - cut * cut)));
        outline.add(wall(top - 1.6 * n, -shaft * 1.1));
        outline.add(wall(top - 1.0 * n, -shaft * 1.3));
        outline.add(wall(top - 0.5 * n, -shaft * 1.52));
        outline.add(wall(top - 0.05 * n, -shaft * 1.62));
        outline.add(neck, 1, -n * 1.0, toBase * 0.6);
        outline.add(neck, 1, -n * 0.96, cut + 0.7 * n, -end, cut + 0.15 * n, -end * 0.7, cut - 0.08 * n);
        outline.add(
                neck, 1, 0, cut - 0.04 * n, end * 0.7, cut - 0.08 * n, end, cut + 0.15 * n, n * 0.92, cut + 0.7 * n);
        if (body.isTrochanterOssified()) {
            Point2D tip = geometry.trochanterTip();
            outline.add(neck, 1, n * 0.95, toBase * 0.66);
            outline.add(new Point2D.Double(tip.getX() - 0.75 * n, tip.getY() + 0.62 * n));
            outline.add(new Point2D.Double(tip.getX() - 0.3 * n, tip.getY() + 0.1 * n));
            outline.add(tip);
            outline.add(new Point2D.Double(tip.getX() + 0.4 * n, tip.getY() + 0.3 * n));
            outline.add(new Point2D.Double(tip.getX() + 0.62 * n, tip.getY() + 0.8 * n));
            outline.add(wall(axisHeight(tip) - 1.4 * n, shaft * 1.95));
        } else {
            outline.add(neck, 1, n * 1.15, toBase * 0.8);
            outline.add(wall(top + 0.95 * n, shaft * 1.55));
            outline.add(wall(top + 0.35 * n, shaft * 1.75));
        }
        outline.add(wall(top - 0.8 * n, shaft * 1.45));
        outline.add(wall(top - 1.8 * n, shaft * 1.16));
    }

    private double capitalPhysis() {
        double r = body.headRadiusMm();
        double grown = Math.clamp((body.ageYears() - 1.5) / 5, 0, 1);
        return r + 1.5 + grown * (0.36 * r - r - 1.5);
    }

    private Profile diaphysisProfile(double top) {
        double knee = length - geometry.femoralEpiphysisMm();
        double wall = shaft * (body.ageYears() < 5 ? 0.36 : 0.42);
        double hip = length - top;
        return Profile.of(
                new double[] {-0.3 * width, neckMm, neckMm * 0.9, 0.009 * width, 0.2},
                new double[] {hip - 0.2 * width, neckMm, neckMm * 1.1, 0.014 * width, 0.2},
                new double[] {hip + 0.25 * width, shaft * 1.2, shaft * 1.2, wall * 0.7, 0.13},
                new double[] {hip + 0.6 * reach, shaft, shaft * 1.03, wall, 0.06},
                new double[] {length - 2.1 * reach, shaft, shaft * 1.03, wall * 0.95, 0.05},
                new double[] {length - 1.5 * reach, 0.2 * width, 0.19 * width, wall * 0.6, 0.09},
                new double[] {length - 1.0 * reach, 0.26 * width, 0.24 * width, wall * 0.28, 0.15},
                new double[] {knee - 0.15 * width, 0.3 * width, 0.3 * width, 0.008 * width, 0.2},
                new double[] {knee + 0.05 * width, 0.3 * width, 0.32 * width, 0.006 * width, 0.22});
    }

    private BonePart head() {
        double r = body.headRadiusMm();
        AffineTransform toBody = new AffineTransform(geometry.femur());
        toBody.concatenate(neck);
        double cut = capitalPhysis() - 0.04 * neckMm - body.physisMm() * 0.7;
        Path2D keep = new Outline()
                .add(
                        1,
                        -3 * r,
                        -3 * r,
                        3 * r,
                        -3 * r,
                        3 * r,
                        cut + 0.2 * r,
                        0.4 * r,
                        cut,
                        -0.4 * r,
                        cut,
                        -3 * r,
                        cut + 0.2 * r)
                .polygon();
        return new BonePart(
                new Ellipse2D.Double(-r, -r, 2 * r, 2 * r),
                keep,
                toBody,
                Profile.constant(r, r, 0.008 * width, 0.24),
                List.of());
    }
}
