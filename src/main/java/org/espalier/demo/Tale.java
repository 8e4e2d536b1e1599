package org.espalier.demo;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalInt;
import org.espalier.demo.drawn.BodyProportions;
import org.espalier.demo.drawn.DrawnPlate;
import org.espalier.science.quantity.Age;
import org.espalier.science.quantity.Sex;
import org.espalier.science.quantity.Side;

/**
 * Tells of one child by what drives its knees: where each physis stood, how it drifts by itself, which plates slow it
 * and when, and on which visits it was filmed. The story of every visit follows.
 */
final class Tale {

    /** mLDFA and mMPTA of a straight knee, degrees. */
    private static final double USUAL = 87.5;

    private final DemoHospital hospital;
    private final String number;
    private final String familyName;
    private final String givenName;
    private final Sex sex;
    private final int ageNowMonths;
    private final List<PhysisTale> physes = new ArrayList<>();
    private final List<Integer> filmed = new ArrayList<>();
    private final List<Integer> missed = new ArrayList<>();
    private final List<Integer> boneAges = new ArrayList<>();
    private DemoDiagnosis diagnosis = DemoDiagnosis.IDIOPATHIC_VALGUS;
    private DemoStory.Build build = DemoStory.Build.USUAL;
    private DemoStory.Filming filming = DemoStory.Filming.BOTH_LEGS;
    private OptionalInt planned = OptionalInt.empty();
    private OptionalInt theatreInDays = OptionalInt.empty();
    private double laxity;
    private int boneAhead;
    private boolean lastUnread;

    private Tale(DemoHospital hospital, String number, String familyName, String givenName, Sex sex, int ageNowMonths) {
        this.hospital = hospital;
        this.number = number;
        this.familyName = familyName;
        this.givenName = givenName;
        this.sex = sex;
        this.ageNowMonths = ageNowMonths;
    }

    static Tale girl(DemoHospital hospital, String number, String familyName, String givenName, int ageNowMonths) {
        return new Tale(hospital, number, familyName, givenName, Sex.FEMALE, ageNowMonths);
    }

    static Tale boy(DemoHospital hospital, String number, String familyName, String givenName, int ageNowMonths) {
        return new Tale(hospital, number, familyName, givenName, Sex.MALE, ageNowMonths);
    }

    Tale has(DemoDiagnosis one) {
        diagnosis = one;
        return this;
    }

    /** How plump it is drawn, and what share of the usual length its legs have. */
    Tale built(double plump, double legShare) {
        build = new DemoStory.Build(plump, legShare);
        return this;
    }

    /** How much the joint opens laterally for each degree of varus, 0 to 0.5. */
    Tale lax(double share) {
        laxity = share;
        return this;
    }

    /** A physis by its own account; one that is not told of stays at what is usual. */
    Tale with(PhysisTale physis) {
        physes.add(physis);
        return this;
    }

    /** The same account for both sides. */
    Tale withBoth(PhysisTale right) {
        return with(right).with(right.mirrored());
    }

    /** Ages in months at which films were taken. */
    Tale filmed(int... months) {
        for (int month : months) {
            filmed.add(month);
        }
        return this;
    }

    /** Ages in months at which the child was expected and was not brought. */
    Tale missed(int... months) {
        for (int month : months) {
            missed.add(month);
        }
        return this;
    }

    /** Ages in months of hand films; the bones are so many months ahead of the birthday. */
    Tale boneAged(int ahead, int... months) {
        boneAhead = ahead;
        for (int month : months) {
            boneAges.add(month);
        }
        return this;
    }

    /** At that age the next operation was decided: plates where there are none, or out with those that are in. */
    Tale planned(int ageMonths) {
        planned = OptionalInt.of(ageMonths);
        return this;
    }

    /** The same, with a day in theatre so many days after the demonstration begins. */
    Tale listed(int ageMonths, int days) {
        theatreInDays = OptionalInt.of(days);
        return planned(ageMonths);
    }

    /** How the films were taken. */
    Tale by(DemoStory.Filming one) {
        filming = one;
        return this;
    }

    /** The newest film waits for its reader. */
    Tale lastUnread() {
        lastUnread = true;
        return this;
    }

    DemoStory told() {
        List<DemoVisit> visits = filmed.stream().map(this::visit).toList();
        List<DemoDeed> deeds = physes.stream()
                .flatMap(physis -> physis.deeds().stream())
                .sorted(Comparator.comparingInt(DemoDeed::ageMonths))
                .toList();
        return new DemoStory(
                hospital,
                number,
                familyName,
                givenName,
                sex,
                ageNowMonths,
                diagnosis,
                build,
                filming,
                visits,
                deeds,
                plans(),
                missed);
    }

    private List<DemoPlan> plans() {
        return planned.stream()
                .boxed()
                .flatMap(age -> physes.stream()
                        .flatMap(physis -> physis.next(age).stream())
                        .map(deed -> new DemoPlan(age, deed, theatreInDays)))
                .toList();
    }

    private DemoVisit visit(int age) {
        double height = height(age);
        DemoVisit visit = DemoVisit.at(age, height, weight(age, height), knee(Side.RIGHT, age), knee(Side.LEFT, age));
        if (boneAges.contains(age)) {
            visit = visit.boneAge(age + boneAhead);
        }
        return lastUnread && age == filmed.getLast() ? visit.unread() : visit;
    }

    private DemoKnee knee(Side side, int age) {
        double mLDFA = angle(side, DrawnPlate.Bone.FEMUR, age);
        double mMPTA = angle(side, DrawnPlate.Bone.TIBIA, age);
        double varus = Math.max(0, mLDFA - mMPTA);
        List<DrawnPlate> plates = physes.stream()
                .filter(physis -> physis.side() == side)
                .flatMap(physis -> physis.plates(age).stream())
                .toList();
        return DemoKnee.of(mLDFA, mMPTA, Math.min(6, laxity * varus)).with(plates);
    }

    private double angle(Side side, DrawnPlate.Bone bone, int age) {
        return physes.stream()
                .filter(physis -> physis.side() == side && physis.bone() == bone)
                .findFirst()
                .map(physis -> physis.angleAt(age))
                .orElse(USUAL);
    }

    /** Height likely for such legs, in cm to the half: judged by eye for the demonstration alone. */
    private double height(int age) {
        BodyProportions body = BodyProportions.at(
                sex == Sex.FEMALE ? BodyProportions.Build.GIRL : BodyProportions.Build.BOY, Age.ofMonths(age));
        double years = age / 12.0;
        double legs = (body.femurMm() + body.headRadiusMm() + body.tibiaMm()) / 10;
        double share = years < 5 ? 0.375 + 0.017 * (years - 2) : Math.min(0.495, 0.426 + 0.012 * (years - 5));
        double trunk = legs / share - legs;
        return Math.round(2 * (trunk * Math.sqrt(build.legShare()) + legs * build.legShare())) / 2.0;
    }

    /** Weight likely for such a build, in kg to the tenth: judged by eye for the demonstration alone. */
    private double weight(int age, double height) {
        double index = (15.6 + 0.33 * Math.max(0, age / 12.0 - 5)) * Math.pow(build.plump() / 1.1, 1.35);
        return Math.round(10 * index * height * height / 10_000) / 10.0;
    }
}
