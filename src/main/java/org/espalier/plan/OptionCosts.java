package org.espalier.plan;

import java.math.BigDecimal;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.espalier.access.CurrentStaff;
import org.espalier.access.Role;
import org.espalier.access.SiteId;
import org.espalier.cost.CostEstimate;
import org.espalier.cost.Quantities;
import org.espalier.cost.TariffItem;
import org.espalier.cost.TariffService;
import org.espalier.prognosis.PhysisStep;
import org.espalier.treatment.ProcedureKind;
import org.springframework.stereotype.Component;

/**
 * What an option would cost at the hospital by its own tariffs: operations, implants, visits and films until the target
 * and after.
 */
@Component
class OptionCosts {

    private static final List<Role> TOLD = List.of(Role.SURGEON, Role.NURSE, Role.AUDITOR);

    /** A plate and its two screws. */
    private static final int PIECES = 3;

    private final TariffService tariffs;
    private final CurrentStaff staff;

    OptionCosts(TariffService tariffs, CurrentStaff staff) {
        this.tariffs = tariffs;
        this.staff = staff;
    }

    /** Empty for those who are told no costs. */
    Optional<CostEstimate> of(SiteId site, OptionOutlook option) {
        return TOLD.stream().anyMatch(role -> staff.has(role, site))
                ? Optional.of(tariffs.estimate(site, quantities(site, option)))
                : Optional.empty();
    }

    private Quantities quantities(SiteId site, OptionOutlook option) {
        var takes = option.takes();
        int after = takes.anaesthetics() > 0 ? takes.visitsAfter() : 0;
        return operations(option)
                .map(done -> tariffs.quantities(site, done))
                .reduce(Quantities.NONE, Quantities::plus)
                .with(TariffItem.VISIT, BigDecimal.valueOf(takes.visits().orElse(0) + after))
                .with(TariffItem.FILM, BigDecimal.valueOf(takes.films().orElse(0) + after))
                .with(TariffItem.IMPLANT, BigDecimal.valueOf((long) PIECES * plates(option)));
    }

    private static int plates(OptionOutlook option) {
        return (int) option.physes().stream()
                .filter(physis -> physis.step() == PhysisStep.PLATE_TODAY)
                .count();
    }

    /** The operations planned from the start, each with all that is done in it. */
    private static Stream<List<ProcedureKind>> operations(OptionOutlook option) {
        int plates = Math.max(1, plates(option));
        return switch (option.option()) {
            case WATCH, MEDICAL_FIRST, BRACE -> Stream.empty();
            case PLATE_FEMUR, PLATE_TIBIA, PLATE_BOTH, ADD_PHYSIS ->
                Stream.of(times(plates, ProcedureKind.PLATE_PLACED), times(plates, ProcedureKind.PLATE_OUT));
            case EXCHANGE_SCREW ->
                Stream.of(List.of(ProcedureKind.METAPHYSEAL_SCREW_EXCHANGED), List.of(ProcedureKind.PLATE_OUT));
            case TAKE_OUT_NOW, TAKE_OUT_AT_TARGET, RELEASE_AND_WAIT -> Stream.of(List.of(ProcedureKind.PLATE_OUT));
            case TAKE_OUT_SCREW ->
                Stream.of(List.of(ProcedureKind.METAPHYSEAL_SCREW_OUT), List.of(ProcedureKind.PLATE_OUT));
            case MOVE_SIDE -> Stream.of(List.of(ProcedureKind.PLATE_MOVED), List.of(ProcedureKind.PLATE_OUT));
            case RESECT_BAR ->
                Stream.of(
                        List.of(ProcedureKind.BAR_RESECTED, ProcedureKind.PLATE_PLACED),
                        List.of(ProcedureKind.PLATE_OUT));
            case OSTEOTOMY -> Stream.of(List.of(ProcedureKind.OSTEOTOMY));
            case PLATEAU_ELEVATION -> Stream.of(List.of(ProcedureKind.PLATEAU_ELEVATED));
            case GRADUAL_CORRECTION ->
                Stream.of(List.of(ProcedureKind.OSTEOTOMY, ProcedureKind.FRAME_ON), List.of(ProcedureKind.FRAME_OFF));
            case DEROTATE_AT_REMOVAL -> Stream.of(List.of(ProcedureKind.PLATE_OUT, ProcedureKind.DEROTATION));
        };
    }

    private static List<ProcedureKind> times(int count, ProcedureKind kind) {
        return Collections.nCopies(count, kind);
    }
}
