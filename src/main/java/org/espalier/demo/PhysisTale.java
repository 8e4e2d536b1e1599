package org.espalier.demo;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.espalier.demo.drawn.DrawnPlate;
import org.espalier.demo.drawn.DrawnPlate.Bone;
import org.espalier.demo.drawn.DrawnPlate.Face;
import org.espalier.science.quantity.Angle;
import org.espalier.science.quantity.Side;

/**
 * The account of one physis of the knee: its angle (mLDFA of the femur, mMPTA of the tibia) from an age on, its drift,
 * the plates on it, the cut through its bone.
 *
 * @param from age in months at which it had the first angle
 * @param degrees first angle
 * @param drift degrees a month, positive when the angle grows
 * @param until age in months at which the drift ends
 */
record PhysisTale(
        Side side,
        Bone bone,
        int from,
        double degrees,
        double drift,
        int until,
        List<Plating> platings,
        List<Cut> cuts) {

    /** A month and a half pass before a plate bites. */
    private static final double LAG = 1.5;

    /** For so long a released physis goes back. */
    private static final int REBOUND_MONTHS = 14;

    /** Screws stand so far apart when placed, and so much further for each degree of correction. */
    private static final double FIRST_DIVERGENCE = 4;

    private static final double DIVERGENCE_PER_DEGREE = 2.1;
    private static final double MOST_DIVERGENCE = 50;
    private static final int STILL_IN = 1_000;

    /**
     * A plate from one age to another.
     *
     * @param rate degrees a month towards straight and beyond
     * @param rebound degrees a month back after it is out
     */
    record Plating(Face face, int in, int out, double rate, double rebound, boolean onlyScrewOut) {

        boolean isIn(int age) {
            return age >= in && (age < out || onlyScrewOut);
        }

        /** Degrees it has moved the joint line by an age. */
        double moved(int age) {
            double held = Math.max(0, Math.min(age, out) - in - LAG);
            double free = Math.clamp(age - out, 0, REBOUND_MONTHS);
            return rate * held - rebound * free;
        }
    }

    /** A cut of the bone, after which the angle is this. */
    record Cut(int age, double to, int frameMonths) {}

    PhysisTale {
        platings = List.copyOf(platings);
        cuts = List.copyOf(cuts);
    }

    static PhysisTale femur(Side side, int from, double mLDFA) {
        return new PhysisTale(side, Bone.FEMUR, from, mLDFA, 0, STILL_IN, List.of(), List.of());
    }

    static PhysisTale tibia(Side side, int from, double mMPTA) {
        return new PhysisTale(side, Bone.TIBIA, from, mMPTA, 0, STILL_IN, List.of(), List.of());
    }

    /** The same with a drift of so many degrees a month up to an age. */
    PhysisTale drifting(double degreesAMonth, int untilMonths) {
        return new PhysisTale(side, bone, from, degrees, degreesAMonth, untilMonths, platings, cuts);
    }

    /** The same with a plate that is still in. */
    PhysisTale plated(int in, double rate) {
        return with(new Plating(face(), in, STILL_IN, rate, 0, false));
    }

    /** The same with a plate that came out. */
    PhysisTale plated(int in, int out, double rate, double rebound) {
        return with(new Plating(face(), in, out, rate, rebound, false));
    }

    /** The same with a plate of which only the metaphyseal screw came out. */
    PhysisTale parked(int in, int out, double rate, double rebound) {
        return with(new Plating(face(), in, out, rate, rebound, true));
    }

    /** The same with an osteotomy; a frame held it for so many months, 0 for none. */
    PhysisTale cut(int age, double to, int frameMonths) {
        List<Cut> more = new ArrayList<>(cuts);
        more.add(new Cut(age, to, frameMonths));
        return new PhysisTale(side, bone, from, degrees, drift, until, platings, more);
    }

    private PhysisTale with(Plating plating) {
        List<Plating> more = new ArrayList<>(platings);
        more.add(plating);
        return new PhysisTale(side, bone, from, degrees, drift, until, more, cuts);
    }

    /** The same account of the other leg. */
    PhysisTale mirrored() {
        return new PhysisTale(side.opposite(), bone, from, degrees, drift, until, platings, cuts);
    }

    /** Varus takes a lateral plate, valgus a medial one. */
    private Face face() {
        return isVarus() ? Face.LATERAL : Face.MEDIAL;
    }

    private boolean isVarus() {
        return bone == Bone.FEMUR ? degrees > 87 : degrees < 87;
    }

    /** The joint angle at an age, degrees. */
    double angleAt(int age) {
        double angle = degrees;
        int since = from;
        for (Cut cut : cuts) {
            if (age >= cut.age()) {
                angle = cut.to();
                since = cut.age();
            }
        }
        int start = since;
        double towards = straightens()
                * platings.stream()
                        .filter(plating -> plating.in() >= start)
                        .mapToDouble(plating -> plating.moved(age))
                        .sum();
        return angle + drift * Math.clamp(age, start, Math.max(start, until)) - drift * start + towards;
    }

    /** 1 when straightening makes the angle larger, −1 when smaller. */
    private int straightens() {
        return degrees > 87 ? -1 : 1;
    }

    /** The plates that lie across it at an age. */
    List<DrawnPlate> plates(int age) {
        return platings.stream()
                .filter(plating -> plating.isIn(age))
                .map(plating -> new DrawnPlate(bone, plating.face(), new Angle(divergence(plating, age))))
                .toList();
    }

    private static double divergence(Plating plating, int age) {
        return Math.clamp(
                FIRST_DIVERGENCE + DIVERGENCE_PER_DEGREE * plating.moved(age), FIRST_DIVERGENCE, MOST_DIVERGENCE);
    }

    /** What is wanted next: out with a plate that is in, or a plate where none ever was and the knee is bent. */
    Optional<DemoDeed> next(int age) {
        if (platings.isEmpty()) {
            return Optional.of(new DemoDeed(age, DemoDeed.What.PLATE_PLACED, side, bone, face()));
        }
        return platings.stream()
                .filter(plating -> plating.out() == STILL_IN)
                .map(plating -> new DemoDeed(age, DemoDeed.What.PLATE_OUT, side, bone, plating.face()))
                .findFirst();
    }

    /** What was done to it, plate by plate and cut by cut. */
    List<DemoDeed> deeds() {
        List<DemoDeed> deeds = new ArrayList<>();
        for (Plating plating : platings) {
            deeds.add(new DemoDeed(plating.in(), DemoDeed.What.PLATE_PLACED, side, bone, plating.face()));
            if (plating.out() != STILL_IN) {
                var what = plating.onlyScrewOut() ? DemoDeed.What.METAPHYSEAL_SCREW_OUT : DemoDeed.What.PLATE_OUT;
                deeds.add(new DemoDeed(plating.out(), what, side, bone, plating.face()));
            }
        }
        for (Cut cut : cuts) {
            deeds.add(new DemoDeed(cut.age(), DemoDeed.What.OSTEOTOMY, side, bone, face()));
            if (cut.frameMonths() > 0) {
                deeds.add(new DemoDeed(cut.age(), DemoDeed.What.FRAME_ON, side, bone, face()));
                deeds.add(new DemoDeed(cut.age() + cut.frameMonths(), DemoDeed.What.FRAME_OFF, side, bone, face()));
            }
        }
        return deeds;
    }
}
