package org.espalier.plan;

import java.util.Locale;
import java.util.OptionalDouble;
import org.espalier.kit.Texts;
import org.espalier.reading.NumberText;
import org.espalier.science.alignment.Norm;
import org.espalier.science.alignment.NormCourse;
import org.espalier.science.alignment.NormQuantity;
import org.espalier.science.alignment.Quantity;

/** Norms in words: every value with its direction, every study with population, method and state of checking. */
final class NormText {

    private NormText() {}

    /** A value of what a norm is of, in its sign. */
    static String value(NormQuantity quantity, double value) {
        return switch (quantity) {
            case TIBIOFEMORAL -> NumberText.of(Quantity.ATFA, value);
            case HKA -> NumberText.of(Quantity.HKA, value);
            case MLDFA -> NumberText.of(Quantity.MLDFA, value);
            case MMPTA -> NumberText.of(Quantity.MMPTA, value);
            case KNEE_GAP -> gap(value);
            case AXIS_ANGLE -> Texts.text("plan.angle", value);
        };
    }

    private static String gap(double value) {
        return Math.round(value) == 0
                ? Texts.text("plan.norm.gap.none")
                : Texts.text(value > 0 ? "plan.norm.gap.ankles" : "plan.norm.gap.knees", Math.abs(value));
    }

    static String printed(Norm norm) {
        var range = norm.range()
                .map(interval -> Texts.text(
                        "plan.norm.range",
                        value(norm.quantity(), interval.low()),
                        value(norm.quantity(), interval.high())))
                .orElse("");
        if (norm.mean().isEmpty()) {
            return range;
        }
        var mean = value(norm.quantity(), norm.mean().getAsDouble());
        var spread = norm.standardDeviation().isPresent()
                ? Texts.text("plan.bow.sd", norm.standardDeviation().getAsDouble())
                : Texts.text("plan.bow.sd.none");
        return (mean + spread + " " + range).strip();
    }

    /** How far a value lies from the mean, and to which side. */
    static String distance(Norm norm, double value) {
        OptionalDouble z = norm.z(value);
        if (z.isEmpty()) {
            return Texts.text("plan.bow.z.none");
        }
        double varus = isVarusPositive(norm.quantity()) ? z.getAsDouble() : -z.getAsDouble();
        return Texts.text(
                "plan.bow.z.value",
                Math.abs(varus),
                Texts.text(varus < 0 ? "kit.Deformity.VALGUS" : "kit.Deformity.VARUS"));
    }

    /** Whether the sign or size of a quantity grows with varus. */
    static boolean isVarusPositive(NormQuantity quantity) {
        return quantity == NormQuantity.HKA || quantity == NormQuantity.MLDFA;
    }

    static String source(Norm norm) {
        return source(
                new NormCourse(norm.study(), norm.quantity(), norm.method()),
                norm.checking().name(),
                norm.note());
    }

    private static String source(NormCourse course, String checking, String note) {
        var source = Texts.text(
                "plan.bow.source",
                course.study().citation(),
                course.study().population(),
                Texts.text("plan.bow.method." + course.method().name()),
                Texts.text("plan.bow.checked." + checking));
        return note.isEmpty() ? source : Texts.text("plan.norm.noted", source, note);
    }

    /** A course in one line, as it is chosen. */
    static String course(NormCourse course) {
        return Texts.text(
                "plan.norm.course",
                method(course),
                Texts.text("plan.norm.quantity." + course.quantity().name()),
                course.study().citation());
    }

    /** How it was measured. */
    static String method(NormCourse course) {
        var text = Texts.text("plan.bow.method." + course.method().name());
        return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    }

    static String source(NormCourse course) {
        return source(course, course.study().checking().name(), "");
    }
}
