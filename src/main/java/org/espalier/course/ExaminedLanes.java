package org.espalier.course;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.espalier.kit.CourseModel;
import org.espalier.kit.DateText;
import org.espalier.kit.Texts;
import org.espalier.kit.Urls;
import org.espalier.patient.Dated;
import org.espalier.patient.Examination;
import org.espalier.patient.LegAngle;
import org.espalier.patient.LegAnswer;
import org.espalier.patient.LegSign;
import org.espalier.science.quantity.Angle;
import org.espalier.science.quantity.Side;

/** Torsion and laxity as examined by hand, on axes of their own beside the angles of the films. */
final class ExaminedLanes {

    private static final List<LegAngle> TORSION = List.of(
            LegAngle.THIGH_FOOT,
            LegAngle.FOOT_PROGRESSION,
            LegAngle.HIP_INTERNAL_ROTATION,
            LegAngle.HIP_EXTERNAL_ROTATION);

    private static final List<LegSign> LAXITY = List.of(LegSign.LATERAL_LAXITY, LegSign.MEDIAL_LAXITY);
    private static final double STEP = 10;
    private static final double MOST_LAX = 3;

    private final Examination examination;
    private final String address;
    private final List<CourseModel.Quantity> quantities = new ArrayList<>();
    private final List<CourseModel.Track> tracks = new ArrayList<>();

    ExaminedLanes(Course course) {
        examination = course.examination();
        address = Urls.examination(course.child().id().value());
        TORSION.forEach(this::add);
        LAXITY.forEach(this::add);
    }

    List<CourseModel.Quantity> quantities() {
        return List.copyOf(quantities);
    }

    List<CourseModel.Track> tracks() {
        return List.copyOf(tracks);
    }

    private void add(LegAngle angle) {
        var label = Texts.of(angle);
        var before = tracks.size();
        Stream.of(Side.values())
                .forEach(side -> track(
                        angle.name(),
                        side,
                        examination.angles(side, angle).stream()
                                .map(found ->
                                        point(side, label, found, found.value().degrees(), angleText(angle, found)))
                                .toList()));
        if (tracks.size() > before) {
            var values = tracks.subList(before, tracks.size()).stream()
                    .flatMap(track -> track.points().stream())
                    .mapToDouble(CourseModel.Point::value)
                    .summaryStatistics();
            quantities.add(lane(
                    angle.name(),
                    label,
                    "torsion",
                    Math.floor(values.getMin() / STEP - 0.2) * STEP,
                    Math.ceil(values.getMax() / STEP + 0.2) * STEP,
                    angle.isDirected() ? "outward" : "more",
                    angle.isDirected() ? "inward" : "less"));
        }
    }

    private void add(LegSign sign) {
        var label = Texts.of(sign);
        var before = tracks.size();
        Stream.of(Side.values())
                .forEach(side -> track(
                        sign.name(),
                        side,
                        examination.answers(side, sign).stream()
                                .map(found -> point(
                                        side,
                                        label,
                                        found,
                                        ((LegAnswer.Laxity) found.value()).ordinal(),
                                        Texts.of((LegAnswer.Laxity) found.value())))
                                .toList()));
        if (tracks.size() > before) {
            quantities.add(lane(sign.name(), label, "laxity", -0.5, MOST_LAX + 0.5, "laxer", "firm"));
        }
    }

    private static CourseModel.Quantity lane(
            String id, String label, String part, double min, double max, String up, String down) {
        return new CourseModel.Quantity(
                id,
                label,
                Texts.text("course.part." + part),
                part.equals("torsion") ? Texts.text("course.unit.DEGREES") : "",
                min,
                max,
                CourseModel.Varus.HIGHER,
                Texts.text("course.end." + up),
                Texts.text("course.end." + down),
                List.of(),
                null);
    }

    private void track(String id, Side side, List<CourseModel.Point> points) {
        if (!points.isEmpty()) {
            tracks.add(new CourseModel.Track(id + "-" + side.letter(), id, side, points));
        }
    }

    private static String angleText(LegAngle angle, Dated<Angle> found) {
        double degrees = found.value().degrees();
        if (!angle.isDirected() || degrees == 0) {
            return Texts.text("course.examined.angle", degrees);
        }
        return Texts.text(
                "course.examined.directed",
                Math.abs(degrees),
                Texts.text(degrees > 0 ? "course.end.outward" : "course.end.inward"));
    }

    private CourseModel.Point point(Side side, String label, Dated<?> found, double value, String text) {
        LocalDate day = found.on();
        return new CourseModel.Point(
                day,
                value,
                0,
                Texts.text("course.examined", DateText.of(day), Texts.of(side), label, text),
                text,
                CourseModel.Kind.SIGNED,
                true,
                false,
                null,
                address);
    }
}
