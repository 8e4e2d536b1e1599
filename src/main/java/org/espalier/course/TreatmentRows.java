package org.espalier.course;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.espalier.kit.CourseModel;
import org.espalier.kit.DateText;
import org.espalier.kit.Texts;
import org.espalier.patient.Bone;
import org.espalier.science.quantity.Side;
import org.espalier.treatment.Hold;
import org.espalier.treatment.Procedure;
import org.espalier.treatment.ScrewSighting;
import org.espalier.treatment.Tether;
import org.espalier.treatment.TetherPeriod;
import org.espalier.treatment.Treatment;
import org.espalier.treatment.TreatmentText;

/** What was done, along the foot of the chart: plates as bars with the state of their screws, procedures as marks. */
final class TreatmentRows {

    private TreatmentRows() {}

    /** What holds each bone, the right first, and then all that was done. */
    static Stream<CourseModel.Row> of(Treatment treatment, List<ScrewSighting> screws) {
        var plates = Stream.of(Side.values())
                .flatMap(side -> Stream.of(Bone.values()).map(bone -> plates(treatment, screws, side, bone)));
        var procedures =
                treatment.standing().stream().flatMap(TreatmentRows::procedure).toList();
        return Stream.concat(
                plates,
                Stream.of(new CourseModel.Row("procedures", Texts.text("course.row.procedures"), null, procedures)));
    }

    private static CourseModel.Row plates(Treatment treatment, List<ScrewSighting> screws, Side side, Bone bone) {
        var bars = treatment.tethers().stream()
                .filter(tether ->
                        tether.physis().side() == side && tether.physis().bone() == bone)
                .flatMap(tether -> tether.periods().stream().map(period -> bar(tether, period)));
        var seen = screws.stream()
                .filter(one -> one.physis().side() == side && one.physis().bone() == bone)
                .filter(one ->
                        !one.signs().isEmpty() && treatment.tethers().stream().anyMatch(one::isOf))
                .map(TreatmentRows::screw);
        var marks = Stream.concat(bars, seen).toList();
        var label = Texts.text("course.row.plates", Texts.of(side), Texts.text("course.bone." + bone.name()));
        return new CourseModel.Row("plates-" + side.letter() + "-" + bone.name(), label, side, marks);
    }

    private static CourseModel.Mark bar(Tether tether, TetherPeriod period) {
        var look = period.hold() == Hold.HOLDS ? CourseModel.Look.PLATE : CourseModel.Look.PLATE_PARKED;
        var days = period.to()
                .map(to -> Texts.text("course.plate.from-to", DateText.of(period.from()), DateText.of(to)))
                .orElseGet(() -> Texts.text("course.plate.since", DateText.of(period.from())));
        var text = Texts.text(
                "course.plate",
                days,
                tether.what(),
                TreatmentText.place(
                        tether.physis().side(),
                        Optional.of(tether.physis()),
                        period.side().orElse(null)),
                Texts.of(period.hold()));
        return new CourseModel.Mark(period.from(), period.to().orElse(null), look, text, null, null);
    }

    private static CourseModel.Mark screw(ScrewSighting seen) {
        var text = Texts.text("course.screw", TreatmentText.of(seen.physis()), TreatmentText.of(seen));
        return new CourseModel.Mark(seen.filmOn(), null, CourseModel.Look.EXAMINED, text, null, null);
    }

    private static Stream<CourseModel.Mark> procedure(Procedure procedure) {
        return procedure.data().stream().map(data -> {
            var acts = data.acts().stream().map(TreatmentText::of).collect(Collectors.joining("; "));
            var text = Texts.text("course.procedure", DateText.of(procedure.on()), acts);
            return new CourseModel.Mark(procedure.on(), null, CourseModel.Look.PROCEDURE, text, null, null);
        });
    }
}
