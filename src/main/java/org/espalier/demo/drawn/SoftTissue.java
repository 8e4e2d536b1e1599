package org.espalier.demo.drawn;

import java.awt.geom.Point2D;
import java.util.ArrayList;
import java.util.List;
import org.espalier.science.quantity.Side;

/** Skin, fat and muscle of trunk and legs, as ellipses stacked down the film. */
final class SoftTissue {

    /**
     * Slices along the segment: where, how far from the axis, half as wide, how thick the fat, in widths of the knee.
     */
    private static final double[][] THIGH = {
        {-0.3, 0.1, 0.16, 0.02}, {-0.06, 0.12, 0.72, 0.11}, {0.1, 0.07, 0.94, 0.11}, {0.27, 0.09, 0.9, 0.1},
        {0.5, 0.09, 0.78, 0.08}, {0.7, 0.05, 0.68, 0.06}, {0.88, 0.01, 0.61, 0.045}, {1.0, 0, 0.59, 0.035}
    };

    private static final double[][] SHANK = {
        {0.1, 0.0, 0.56, 0.03},
        {0.2, 0.0, 0.6, 0.04},
        {0.32, 0.02, 0.63, 0.05},
        {0.48, 0.02, 0.57, 0.045},
        {0.68, 0.02, 0.47, 0.035},
        {0.86, 0.02, 0.42, 0.03},
        {0.97, 0.01, 0.44, 0.025}
    };

    private static final double[][] FOOT = {
        {0.2, 0.02, 0.43, 0.6},
        {0.45, 0.03, 0.48, 0.9},
        {0.75, 0.04, 0.52, 1.2},
        {0.95, 0.04, 0.5, 0.9},
        {1.04, 0.04, 0.42, 0.5}
    };

    /** Muscle and fat along one ray, mm. */
    static final class Path {
        float muscle;
        float fat;
    }

    /**
     * One ellipse: where its middle lies, how wide and deep it is and how thick its fat, mm.
     */
    record Slice(double centre, double half, double depth, double fat) {

        private void cross(double x, Path path) {
            double u = (x - centre) / half;
            if (u * u >= 1) {
                return;
            }
            double whole = 2 * depth * Math.sqrt(1 - u * u);
            double inner = (x - centre) / (half - fat);
            double lean = inner * inner >= 1 ? 0 : 2 * (depth - fat) * Math.sqrt(1 - inner * inner);
            path.muscle += (float) (lean * lean * lean * lean);
            path.fat += (float) (whole * whole * whole * whole);
        }
    }

    private final List<double[]> right;
    private final List<double[]> left;
    private final List<double[]> trunk;

    /**
     * @param plump 1 for a slim child, 1.6 for a very heavy one
     */
    SoftTissue(LimbGeometry right, LimbGeometry left, double plump) {
        this.right = leg(right, plump);
        this.left = leg(left, plump);
        this.trunk = trunk(right.body(), plump);
    }

    /** Half the width of the leg at the knee, so that two knees can stand side by side. */
    static double kneeHalf(BodyProportions body, double plump) {
        return body.kneeWidthMm() * (0.6 + 0.12 * (plump - 1) + toddler(body) * 0.08);
    }

    private static double toddler(BodyProportions body) {
        return Math.clamp((6 - body.ageYears()) / 4, 0, 1);
    }

    /** Slices of everything at one height of the body plane. */
    List<Slice> at(double y) {
        List<Slice> slices = new ArrayList<>();
        for (List<double[]> knots : List.of(right, left, trunk)) {
            if (y >= knots.getFirst()[0] && y <= knots.getLast()[0]) {
                double[] row = between(knots, y);
                if (row[2] > row[4] + 0.5 && row[3] > row[4] + 0.5) {
                    slices.add(new Slice(row[1], row[2], row[3], row[4]));
                }
            }
        }
        return slices;
    }

    /** Slices that overlap melt into each other as the fourth root of the sum of fourth powers. */
    static void cross(List<Slice> slices, double x, Path path) {
        path.muscle = 0;
        path.fat = 0;
        for (Slice slice : slices) {
            slice.cross(x, path);
        }
        if (path.fat > 0) {
            path.muscle = (float) Math.sqrt(Math.sqrt(path.muscle));
            path.fat = Math.max(0, (float) Math.sqrt(Math.sqrt(path.fat)) - path.muscle);
        }
    }

    private static List<double[]> leg(LimbGeometry leg, double plump) {
        BodyProportions body = leg.body();
        double sign = leg.limb().side() == Side.RIGHT ? -1 : 1;
        double width = body.kneeWidthMm();
        double femur = leg.limb().femur().millimetres();
        double tibia = leg.limb().tibia().millimetres();
        double small = toddler(body);
        double thick = plump - 1;
        List<double[]> knots = new ArrayList<>();
        for (double[] t : THIGH) {
            double half = width * (t[2] + thick * (0.85 - 0.5 * t[0]) * 0.6 + small * 0.1 * (1 - t[0]));
            Point2D p = LimbGeometry.at(leg.femur(), t[1] * width, t[0] * femur);
            knots.add(slice(p, half, half * 1.0, width * (t[3] * (1 + 1.8 * thick) + 0.05 * small * t[2])));
        }
        for (double[] t : SHANK) {
            double half = width * (t[2] + thick * 0.2 + small * 0.06);
            Point2D p = LimbGeometry.at(leg.tibia(), t[1] * width, t[0] * tibia);
            knots.add(slice(p, half, half * 1.05, width * (t[3] * (1 + 1.2 * thick) + 0.02 * small)));
        }
        for (double[] t : FOOT) {
            Point2D p = LimbGeometry.at(leg.tibia(), t[1] * width, tibia + t[0] * width);
            knots.add(new double[] {p.getY(), p.getX(), t[2] * width, t[3] * width * 0.6, 0.03 * width});
        }
        return knots;
    }

    private static double[] slice(Point2D p, double half, double depth, double fat) {
        return new double[] {p.getY(), p.getX(), half, depth, fat};
    }

    private static List<double[]> trunk(BodyProportions body, double plump) {
        double unit = body.hipHalfMm();
        double wide = unit * (1.72 + 0.5 * (plump - 1));
        double deep = unit * (0.92 + 0.35 * (plump - 1));
        double fat = unit * 0.12 * (1 + 1.8 * (plump - 1));
        List<double[]> knots = new ArrayList<>();
        knots.add(new double[] {-2.2 * unit, 0, wide * 0.9, deep, fat});
        knots.add(new double[] {-1.5 * unit, 0, wide * 0.93, deep, fat});
        knots.add(new double[] {-0.6 * unit, 0, wide * 1.02, deep * 1.02, fat});
        knots.add(new double[] {0.1 * unit, 0, wide * 1.06, deep * 0.96, fat});
        knots.add(new double[] {0.5 * unit, 0, wide * 1.02, deep * 0.8, fat});
        knots.add(new double[] {0.78 * unit, 0, wide * 0.5, deep * 0.5, fat});
        knots.add(new double[] {1.05 * unit, 0, wide * 0.12, deep * 0.05, fat * 0.5});
        return knots;
    }

    private static double[] between(List<double[]> knots, double y) {
        int upper = 1;
        while (upper < knots.size() - 1 && knots.get(upper)[0] < y) {
            upper++;
        }
        double[] a = knots.get(upper - 1);
        double[] b = knots.get(upper);
        double span = b[0] - a[0];
        double[] before = knots.get(Math.max(0, upper - 2));
        double[] after = knots.get(Math.min(knots.size() - 1, upper + 1));
        double t = Math.clamp((y - a[0]) / Math.max(1e-6, span), 0, 1);
        double[] row = new double[a.length];
        for (int i = 1; i < row.length; i++) {
            double slopeA = (b[i] - before[i]) / Math.max(1e-6, b[0] - before[0]) * span;
            double slopeB = (after[i] - a[i]) / Math.max(1e-6, after[0] - a[0]) * span;
            row[i] = hermite(a[i], b[i], slopeA, slopeB, t);
        }
        return row;
    }

    private static double hermite(double a, double b, double slopeA, double slopeB, double t) {
        double t2 = t * t;
        double t3 = t2 * t;
        return a * (2 * t3 - 3 * t2 + 1) + slopeA * (t3 - 2 * t2 + t) + b * (3 * t2 - 2 * t3) + slopeB * (t3 - t2);
    }
}
