package org.espalier.plan;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.espalier.patient.TibiaVaraStage;
import org.espalier.prognosis.Forecast;
import org.espalier.prognosis.NaturalOutlook;
import org.espalier.prognosis.PhysisAhead;
import org.espalier.science.forecast.Deformity;
import org.espalier.science.forecast.PhysisSite;
import org.espalier.science.growth.PlateWindow;

/** What is pointed out beside each option. */
record Flags(LimbFacts facts) {

    private static final Set<Option> TETHERS = EnumSet.of(
            Option.PLATE_FEMUR,
            Option.PLATE_TIBIA,
            Option.PLATE_BOTH,
            Option.ADD_PHYSIS,
            Option.EXCHANGE_SCREW,
            Option.MOVE_SIDE);
    private static final Set<Option> RELEASES =
            EnumSet.of(Option.TAKE_OUT_NOW, Option.TAKE_OUT_AT_TARGET, Option.TAKE_OUT_SCREW, Option.RELEASE_AND_WAIT);
    private static final Set<Option> CUTS = EnumSet.of(
            Option.OSTEOTOMY, Option.PLATEAU_ELEVATION, Option.GRADUAL_CORRECTION, Option.DEROTATE_AT_REMOVAL);

    Set<Flag> of(Option option, List<PhysisReach> physes, List<PhysisAhead> touched) {
        var flags = EnumSet.noneOf(Flag.class);
        if (TETHERS.contains(option)) {
            addOfTether(flags, physes);
        }
        add(flags, Flag.DYSPLASIA, RELEASES.contains(option) && facts.isDysplasia());
        add(flags, Flag.UNDER_EIGHT, RELEASES.contains(option) && facts.isUnderEight());
        add(flags, Flag.ANAESTHETIC_AND_CUT, CUTS.contains(option));
        add(flags, Flag.BEFORE_FOURTH_BIRTHDAY, !RELEASES.contains(option) && facts.isDecidedBeforeFourth());
        add(flags, Flag.FALLS_BEHIND, option == Option.WATCH && fallsBehind());
        add(flags, Flag.SCREW_BROKEN, touched.stream().anyMatch(one -> one.seenBroken()
                .isPresent()));
        return flags;
    }

    private void addOfTether(Set<Flag> flags, List<PhysisReach> physes) {
        add(flags, Flag.HEAVY, facts.isHeavy());
        add(flags, Flag.LATE_FOR_PLATE, facts.isLateForPlate());
        add(flags, Flag.STAGE_THREE_AND_OVER, facts.isStage(TibiaVaraStage.Stage.III));
        add(flags, Flag.BAR, facts.hasBar());
        add(flags, Flag.TORSION_LEFT, facts.isTwisted());
        physes.forEach(physis -> addOf(flags, physis));
    }

    private void addOf(Set<Flag> flags, PhysisReach physis) {
        if (physis.outlook() instanceof Forecast forecast) {
            add(flags, Flag.CAUSE_NOT_STUDIED, !forecast.isCauseStudied());
            add(
                    flags,
                    Flag.FEMUR_VARUS,
                    forecast.site() == PhysisSite.DISTAL_FEMUR && forecast.corrects() == Deformity.VARUS);
        }
        physis.window().ifPresent(window -> {
            switch (window) {
                case PlateWindow.Dates dates ->
                    add(flags, Flag.WINDOW_CLOSED, dates.isClosed(facts.ahead().today()));
                case PlateWindow.None none ->
                    add(flags, Flag.WINDOW_UNKNOWN, none.reason() != PlateWindow.Reason.AT_TARGET);
            }
        });
    }

    private boolean fallsBehind() {
        return facts.ahead()
                .prognosis()
                .natural(facts.side())
                .flatMap(NaturalOutlook::trend)
                .filter(NaturalOutlook.Trend::isBehind)
                .isPresent();
    }

    private static void add(Set<Flag> flags, Flag flag, boolean holds) {
        if (holds) {
            flags.add(flag);
        }
    }
}
