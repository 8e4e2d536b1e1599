package org.espalier.science.forecast;

import java.util.Optional;
import org.espalier.science.quantity.Angle;

/**
 * Where both bones of one knee are going together. A bone without a tether stays as it is. The two forecasts count as
 * independent: the films of both bones are the same, so that the spread of their difference is a little too wide or too
 * narrow.
 *
 * @param femur the lower end of the femur
 * @param tibia the upper end of the tibia
 */
public record LimbForecast(Bone femur, Bone tibia) {

    /**
     * One bone.
     *
     * @param now its joint angle, mLDFA or mMPTA, as known today
     * @param error standard deviation of what is known today, in degrees
     * @param tether its plate; empty if it has none
     */
    public record Bone(Angle now, double error, Optional<Tether> tether) {

        private Spread at(PhysisSite site, double monthsAhead) {
            return tether.map(plate -> plate.at(site, monthsAhead))
                    .orElseGet(() -> Spread.ofNormal(now.degrees(), error));
        }

        private Bone released(PhysisSite site) {
            return tether.map(plate -> plate.at(site, 0))
                    .map(today -> new Bone(Angle.ofDegrees(today.mean()), today.standardDeviation(), Optional.empty()))
                    .orElse(this);
        }
    }

    /**
     * A plate at work.
     *
     * @param deformity which way the bone is bent that it corrects
     * @param target the joint angle aimed at
     * @param forecast in degrees left to that target
     * @param today months since the plate
     */
    public record Tether(Deformity deformity, Angle target, TetherForecast forecast, double today) {

        private Spread at(PhysisSite site, double monthsAhead) {
            double sign = deformity.jointAngle(site, 1, target).minus(target).degrees();
            return forecast.degreesLeft(today + monthsAhead).scaled(sign, target.degrees());
        }
    }

    /** mLDFA so many months from today. */
    public Spread femurAngle(double monthsAhead) {
        return femur.at(PhysisSite.DISTAL_FEMUR, monthsAhead);
    }

    /** mMPTA so many months from today. */
    public Spread tibiaAngle(double monthsAhead) {
        return tibia.at(PhysisSite.PROXIMAL_TIBIA, monthsAhead);
    }

    /** Bony HKA, mLDFA − mMPTA, + varus, so many months from today. */
    public Spread bonyHka(double monthsAhead) {
        return femurAngle(monthsAhead).minus(tibiaAngle(monthsAhead));
    }

    /**
     * HKA so many months from today, + varus, if the joint opens as it does now.
     *
     * @param opening JLCA, + opens laterally
     */
    public Spread hka(double monthsAhead, Angle opening) {
        return bonyHka(monthsAhead).scaled(1, opening.degrees());
    }

    /** The limb if the plate at the femur comes out today: what stays there, and where the tibia goes on. */
    public LimbForecast withoutFemurPlate() {
        return new LimbForecast(femur.released(PhysisSite.DISTAL_FEMUR), tibia);
    }

    /** The limb if the plate at the tibia comes out today. */
    public LimbForecast withoutTibiaPlate() {
        return new LimbForecast(femur, tibia.released(PhysisSite.PROXIMAL_TIBIA));
    }
}
