package org.espalier.course;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.espalier.kit.CourseModel;
import org.espalier.kit.Texts;
import org.espalier.science.alignment.Quantity;
import org.jspecify.annotations.Nullable;

/** How one quantity lies in the chart: which end is varus, what stands at the ends of its axis, how far it reaches. */
record Lane(
        Quantity quantity,
        String part,
        String unit,
        CourseModel.Varus varus,
        @Nullable String up,
        @Nullable String down,
        double step) {

    /** Shown first, in this order; HKA and bony HKA side by side. */
    private static final List<Quantity> FIRST =
            List.of(Quantity.HKA, Quantity.BONY_HKA, Quantity.MLDFA, Quantity.MMPTA);

    private static final Set<Quantity> AT_A_GLANCE = EnumSet.of(
            Quantity.HKA,
            Quantity.BONY_HKA,
            Quantity.MLDFA,
            Quantity.MMPTA,
            Quantity.JLCA,
            Quantity.MAD,
            Quantity.FEMUR_LENGTH,
            Quantity.TIBIA_LENGTH);

    private static final Set<Quantity> WITHOUT_LANE =
            EnumSet.of(Quantity.KNEE_OFFSET, Quantity.FEMUR_PHYSIS_WIDTH, Quantity.TIBIA_PHYSIS_WIDTH);

    private static final Set<Quantity> WIDE = EnumSet.of(
            Quantity.MAD,
            Quantity.WBL,
            Quantity.FEMUR_LENGTH,
            Quantity.TIBIA_LENGTH,
            Quantity.LIMB_LENGTH,
            Quantity.FEMUR_FILM_LENGTH,
            Quantity.TIBIA_FILM_LENGTH,
            Quantity.LIMB_FILM_LENGTH,
            Quantity.FEMUR_PHYSIS_WIDTH,
            Quantity.TIBIA_PHYSIS_WIDTH);

    static Lane of(Quantity quantity) {
        var unit = Texts.text("course.unit." + quantity.unit().name());
        double step = WIDE.contains(quantity) ? 10 : 5;
        var part = Texts.text("course.part." + part(quantity));
        return switch (quantity) {
            case JLCA ->
                new Lane(
                        quantity,
                        part,
                        unit,
                        CourseModel.Varus.HIGHER,
                        word("opens-lateral"),
                        word("opens-medial"),
                        step);
            case MAD, WBL ->
                new Lane(quantity, part, unit, CourseModel.Varus.LOWER, word("medial"), word("lateral"), step);
            case KNEE_OFFSET ->
                new Lane(quantity, part, unit, CourseModel.Varus.HIGHER, word("lateral"), word("medial"), step);
            case MMPTA, TIBIA_PHYSIS_ANGLE, ATFA ->
                new Lane(quantity, part, unit, CourseModel.Varus.LOWER, null, null, step);
            case FEMUR_LENGTH, TIBIA_LENGTH, LIMB_LENGTH, FEMUR_PHYSIS_WIDTH, TIBIA_PHYSIS_WIDTH ->
                new Lane(quantity, part, unit, CourseModel.Varus.HIGHER, word("longer"), word("shorter"), step);
            default -> new Lane(quantity, part, unit, CourseModel.Varus.HIGHER, null, null, step);
        };
    }

    /** Those with a lane of their own: what is read to judge the reading itself stands in the list alone. */
    static List<Quantity> drawn(List<Quantity> quantities) {
        return inOrder(quantities).stream()
                .filter(quantity -> !WITHOUT_LANE.contains(quantity))
                .toList();
    }

    /** Whether a limb is judged by it at a glance; the others stand folded beneath. */
    static boolean isLeading(Quantity quantity) {
        return AT_A_GLANCE.contains(quantity);
    }

    /** Whether points are joined: the convergence of the joint lines is less than its own error, so it is not. */
    boolean isTrended() {
        return quantity != Quantity.JLCA;
    }

    /** Those shown first, then the others as they are listed. */
    static List<Quantity> inOrder(List<Quantity> quantities) {
        var ordered = new ArrayList<>(FIRST);
        ordered.retainAll(quantities);
        quantities.stream().filter(quantity -> !FIRST.contains(quantity)).forEach(ordered::add);
        return List.copyOf(ordered);
    }

    double roundDown(double value) {
        return Math.floor(value / step - 0.2) * step;
    }

    double roundUp(double value) {
        return Math.ceil(value / step + 0.2) * step;
    }

    private static String part(Quantity quantity) {
        return switch (quantity) {
            case MLDFA,
                    LPFA,
                    ALDFA,
                    AMA,
                    FMDA,
                    FEMUR_PHYSIS_ANGLE,
                    FEMUR_LENGTH,
                    FEMUR_FILM_LENGTH,
                    FEMUR_PHYSIS_WIDTH,
                    FEMUR_SCREW_ANGLE,
                    FEMUR_METAPHYSIS_SCREW_EXPOSED,
                    FEMUR_EPIPHYSIS_SCREW_EXPOSED,
                    FEMUR_PLATE_LENGTH,
                    PDFA,
                    FEMUR_PROCURVATUM -> "femur";
            case MMPTA,
                    LDTA,
                    MDA,
                    MDA_CORTEX,
                    EMA,
                    MEDIAL_PLATEAU_SLOPE,
                    LATERAL_PLATEAU_SLOPE,
                    PLATEAU_DEPRESSION,
                    TIBIA_PHYSIS_ANGLE,
                    TIBIA_LENGTH,
                    TIBIA_FILM_LENGTH,
                    TIBIA_PHYSIS_WIDTH,
                    TIBIA_SCREW_ANGLE,
                    TIBIA_METAPHYSIS_SCREW_EXPOSED,
                    TIBIA_EPIPHYSIS_SCREW_EXPOSED,
                    TIBIA_PLATE_LENGTH,
                    PPTA,
                    ADTA,
                    TIBIA_PROCURVATUM -> "tibia";
            case JLCA, KNEE_OFFSET, PATELLA_POSITION, FIBULA_POSITION, KNEE_FLEXION -> "knee";
            case HKA, BONY_HKA, ATFA, MAD, WBL, LIMB_LENGTH, LIMB_FILM_LENGTH -> "limb";
        };
    }

    private static String word(String name) {
        return Texts.text("course.end." + name);
    }
}
