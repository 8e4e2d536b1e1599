package org.espalier.plan;

import static org.espalier.prognosis.PhysisStep.AS_IT_IS;
import static org.espalier.prognosis.PhysisStep.EXCHANGED_TODAY;
import static org.espalier.prognosis.PhysisStep.MOVED_TODAY;
import static org.espalier.prognosis.PhysisStep.OUT_AT_TARGET;
import static org.espalier.prognosis.PhysisStep.OUT_TODAY;
import static org.espalier.prognosis.PhysisStep.PLATE_TODAY;
import static org.espalier.prognosis.PhysisStep.SCREW_OUT_TODAY;

import org.espalier.prognosis.LimbAhead;
import org.espalier.prognosis.PhysisAhead;
import org.espalier.prognosis.PhysisStep;

/** What an option does at each physis of the knee. */
record Steps(PhysisStep femur, PhysisStep tibia) {

    static Steps of(Option option, LimbAhead limb) {
        return switch (option) {
            case PLATE_FEMUR -> new Steps(PLATE_TODAY, AS_IT_IS);
            case PLATE_TIBIA -> new Steps(AS_IT_IS, PLATE_TODAY);
            case PLATE_BOTH -> new Steps(PLATE_TODAY, PLATE_TODAY);
            case ADD_PHYSIS -> each(limb, PLATE_TODAY);
            case EXCHANGE_SCREW -> each(limb, EXCHANGED_TODAY);
            case TAKE_OUT_NOW, DEROTATE_AT_REMOVAL, RELEASE_AND_WAIT -> each(limb, OUT_TODAY);
            case TAKE_OUT_AT_TARGET -> each(limb, OUT_AT_TARGET);
            case TAKE_OUT_SCREW -> each(limb, SCREW_OUT_TODAY);
            case MOVE_SIDE -> each(limb, MOVED_TODAY);
            case WATCH, MEDICAL_FIRST, BRACE, RESECT_BAR, OSTEOTOMY, PLATEAU_ELEVATION, GRADUAL_CORRECTION ->
                new Steps(AS_IT_IS, AS_IT_IS);
        };
    }

    /** The step wherever it can be taken. */
    private static Steps each(LimbAhead limb, PhysisStep step) {
        return new Steps(where(limb.femur(), step), where(limb.tibia(), step));
    }

    private static PhysisStep where(PhysisAhead physis, PhysisStep step) {
        return physis.outlook(step).isPresent() ? step : AS_IT_IS;
    }
}
