package org.espalier.patient;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.espalier.kit.Texts;
import org.espalier.science.quantity.Angle;

/** What was found on a leg as a clinician reads it, with the direction in words. */
public final class LegText {

    private LegText() {}

    /** The angle with its direction: {@code 12° external}. */
    public static String of(LegAngle what, Angle angle) {
        long degrees = Math.round(Math.abs(angle.degrees()));
        return what.isDirected() && degrees != 0
                ? Texts.text("patient.angle.directed", degrees, direction(what, angle.degrees() > 0))
                : Texts.text("patient.angle.plain", degrees);
    }

    /** The word for one of the two directions of an angle. */
    public static String direction(LegAngle what, boolean positive) {
        return Texts.text("patient.direction." + what + (positive ? ".plus" : ".minus"));
    }

    /** The answer in words. */
    public static String of(LegAnswer answer) {
        return Texts.of((Enum<?>) answer);
    }

    /** All that was recorded of a leg, each with its name, the signs first. */
    public static List<String> of(LegExamination leg) {
        var angles = Arrays.stream(LegAngle.values()).flatMap(what -> leg.angle(what).stream()
                .map(angle -> Texts.text("patient.named", Texts.of(what), of(what, angle))));
        var signs = Arrays.stream(LegSign.values()).flatMap(sign -> leg.answer(sign).stream()
                .map(answer -> Texts.text("patient.named", Texts.of(sign), of(answer))));
        return Stream.concat(signs, angles).toList();
    }
}
