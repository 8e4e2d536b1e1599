package org.espalier.plan;

import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.espalier.prognosis.LimbAhead;
import org.espalier.prognosis.PhysisAhead;
import org.espalier.prognosis.PhysisStep;
import org.espalier.treatment.PhysisState;

/**
 * Which options stand in the table of a limb today, and why the others do not. Nothing is left out for being thought
 * worse.
 */
record Applicability(LimbFacts facts, LimbAhead limb) {

    Optional<NotNow> notNow(Option option) {
        return switch (option) {
            case WATCH -> Optional.empty();
            case MEDICAL_FIRST -> unless(facts.hasBoneDisease(), NotNow.NO_BONE_DISEASE);
            case BRACE -> unless(facts.isBraced(), NotNow.OLDER_THAN_BRACED);
            case PLATE_FEMUR -> plate(limb.femur());
            case PLATE_TIBIA -> plate(limb.tibia());
            case PLATE_BOTH -> plate(limb.femur()).or(() -> plate(limb.tibia()));
            case ADD_PHYSIS -> unless(isHeldAtOne(), NotNow.NOT_ONE_OF_TWO_HELD).or(this::other);
            case EXCHANGE_SCREW, TAKE_OUT_SCREW -> unless(any(PhysisAhead::heldAgainst), NotNow.NOTHING_IN);
            case TAKE_OUT_NOW, DEROTATE_AT_REMOVAL -> unless(takes(PhysisStep.OUT_TODAY), NotNow.NOTHING_IN);
            case TAKE_OUT_AT_TARGET ->
                unless(any(PhysisAhead::heldAgainst), NotNow.NOTHING_IN)
                        .or(() -> unless(takes(PhysisStep.OUT_AT_TARGET), NotNow.TARGET_NOT_FORESEEN));
            case RELEASE_AND_WAIT, MOVE_SIDE ->
                unless(any(PhysisAhead::heldAgainst), NotNow.NOTHING_IN)
                        .or(() -> unless(takes(PhysisStep.MOVED_TODAY), NotNow.NOT_PAST_TARGET));
            case RESECT_BAR -> unless(facts.hasBar(), NotNow.NO_BAR_REPORTED);
            case PLATEAU_ELEVATION -> unless(facts.isDepressed(), NotNow.NO_DEPRESSION_REPORTED);
            case OSTEOTOMY, GRADUAL_CORRECTION -> bent();
        };
    }

    private Optional<NotNow> plate(PhysisAhead physis) {
        if (physis.outlook(PhysisStep.PLATE_TODAY).isPresent()) {
            return Optional.empty();
        }
        if (physis.state() == PhysisState.MATURE) {
            return Optional.of(NotNow.MATURE);
        }
        if (physis.state().hasTether()) {
            return Optional.of(NotNow.HELD_ALREADY);
        }
        if (facts.ahead().prognosis().age().isEmpty()) {
            return Optional.of(NotNow.SEX_UNKNOWN);
        }
        boolean read = physis.last().isPresent();
        return Optional.of(read && physis.left().isEmpty() ? NotNow.AT_TARGET : NotNow.NO_RECENT_FILM);
    }

    private Optional<NotNow> other() {
        return plate(limb.femur().heldAgainst().isPresent() ? limb.tibia() : limb.femur());
    }

    private boolean isHeldAtOne() {
        return limb.femur().heldAgainst().isPresent()
                != limb.tibia().heldAgainst().isPresent();
    }

    private Optional<NotNow> bent() {
        if (limb.femur().last().isEmpty() && limb.tibia().last().isEmpty()) {
            return Optional.of(NotNow.NO_RECENT_FILM);
        }
        return unless(any(PhysisAhead::left), NotNow.AT_TARGET);
    }

    private boolean takes(PhysisStep step) {
        return any(physis -> physis.outlook(step));
    }

    private boolean any(Function<PhysisAhead, Optional<?>> what) {
        Predicate<PhysisAhead> has = physis -> what.apply(physis).isPresent();
        return Stream.of(limb.femur(), limb.tibia()).anyMatch(has);
    }

    private static Optional<NotNow> unless(boolean holds, NotNow reason) {
        return holds ? Optional.empty() : Optional.of(reason);
    }
}
