package org.espalier.plan;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.espalier.kit.DateText;
import org.espalier.kit.QuantityText;
import org.espalier.kit.Texts;
import org.espalier.patient.Bone;
import org.espalier.prognosis.FilmAngle;
import org.espalier.science.alignment.Quantity;
import org.espalier.science.quantity.Angle;

/**
 * A bend of a bone as a reading tells it: from the front by its joint angle against 87 degrees, from the side by the
 * bend of the shaft, or by its joint angle against the mean of adults (from memory: PPTA 81, PDFA 83 degrees).
 *
 * @param angle + varus from the front, + procurvatum from the side
 * @param read the number it comes from
 */
record ReadAngle(Bone bone, boolean fromTheSide, Angle angle, FilmAngle read) {

    private static final double JOINT_LINE = 87;
    private static final double PPTA = 81;
    private static final double PDFA = 83;

    /** Those that are read, tibia before femur, front before side. */
    static List<ReadAngle> of(LimbMeasures measures) {
        return Stream.of(
                        read(measures, Bone.TIBIA, Quantity.MMPTA, -1, JOINT_LINE),
                        read(measures, Bone.TIBIA, Quantity.TIBIA_PROCURVATUM, 1, 0),
                        read(measures, Bone.TIBIA, Quantity.PPTA, -1, PPTA),
                        read(measures, Bone.FEMUR, Quantity.MLDFA, 1, JOINT_LINE),
                        read(measures, Bone.FEMUR, Quantity.FEMUR_PROCURVATUM, 1, 0),
                        read(measures, Bone.FEMUR, Quantity.PDFA, -1, PDFA))
                .flatMap(Optional::stream)
                .toList();
    }

    private static Optional<ReadAngle> read(
            LimbMeasures measures, Bone bone, Quantity quantity, int sign, double straight) {
        return measures.latest(quantity)
                .map(film -> new ReadAngle(
                        bone,
                        quantity != Quantity.MMPTA && quantity != Quantity.MLDFA,
                        Angle.ofDegrees(sign * (film.value() - straight)),
                        film));
    }

    LocalDate on() {
        return read.on();
    }

    /** What it can be typed into. */
    String input() {
        return fromTheSide ? "procurvatum" : "varus";
    }

    /** With a tenth of a degree, as it is shown and typed. */
    double tenths() {
        double tenths = Math.round(angle.degrees() * 10) / 10.0;
        return tenths == 0 ? 0 : tenths;
    }

    String words() {
        return Texts.text(
                "plan.read",
                Texts.text("plan.Bone." + bone.name()),
                fromTheSide
                        ? OsteotomySheet.directed(
                                Angle.ofDegrees(tenths()), "plan.cut.procurvatum", "plan.cut.recurvatum")
                        : QuantityText.ofDeviation(angle),
                Texts.text("plan.read." + read.quantity().name(), read.value()),
                Texts.text(fromTheSide ? "plan.read.side" : "plan.read.front"),
                DateText.of(on()));
    }
}
