package org.espalier.plan;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.espalier.kit.DateText;
import org.espalier.kit.QuantityText;
import org.espalier.kit.Texts;
import org.espalier.patient.Bone;
import org.espalier.science.planning.BoneDeformity;
import org.espalier.science.planning.TruePlane;
import org.espalier.science.quantity.Age;
import org.espalier.science.quantity.Angle;

/** The plane in which a bone is bent, from what was read on two films, and from what was typed. */
record PlanePart(List<ReadAngle> read) {

    /** What the films tell, to be taken over, with how far apart they are. */
    List<Sheet.Part> ofFilms() {
        var parts = new ArrayList<Sheet.Part>();
        if (!read.isEmpty()) {
            parts.add(new Sheet.Offer(
                    Texts.text("plan.read.heading"),
                    read.stream()
                            .map(one -> new Sheet.Offered(one.input(), one.tenths(), one.words()))
                            .toList()));
        }
        if (read.stream().noneMatch(ReadAngle::fromTheSide)) {
            parts.add(new Sheet.Note(Texts.text("plan.read.no-side")));
            return parts;
        }
        for (Bone bone : List.of(Bone.TIBIA, Bone.FEMUR)) {
            ofBone(bone).ifPresent(parts::add);
        }
        parts.add(new Sheet.Note(apart()));
        return parts;
    }

    private Optional<Sheet.Part> ofBone(Bone bone) {
        return first(bone, false).flatMap(front -> first(bone, true).map(side -> {
            var plane = TruePlane.of(front.angle(), side.angle());
            return new Sheet.Note(Texts.text("plan.read.plane", Texts.text("plan.Bone." + bone.name()), of(plane)));
        }));
    }

    private Optional<ReadAngle> first(Bone bone, boolean fromTheSide) {
        return read.stream()
                .filter(one -> one.bone() == bone && one.fromTheSide() == fromTheSide)
                .findFirst();
    }

    /** The films that tell most, one from the front and one from the side, and the time between them. */
    private String apart() {
        var front = latest(false);
        var side = latest(true);
        return front.flatMap(one -> side.map(other -> apart(one, other)))
                .orElseGet(() -> Texts.text("plan.read.no-front"));
    }

    private static String apart(ReadAngle front, ReadAngle side) {
        if (front.on().equals(side.on())) {
            return Texts.text("plan.read.one-day", DateText.of(front.on()));
        }
        var earlier = front.on().isBefore(side.on()) ? front.on() : side.on();
        var later = front.on().isBefore(side.on()) ? side.on() : front.on();
        return Texts.text(
                "plan.read.apart",
                DateText.of(side.on()),
                span(earlier, later),
                Texts.text(side.on().isBefore(front.on()) ? "plan.read.before" : "plan.read.after"),
                DateText.of(front.on()));
    }

    private static String span(LocalDate earlier, LocalDate later) {
        var age = Age.between(earlier, later);
        var days = Texts.text("plan.read.days", ChronoUnit.DAYS.between(earlier, later));
        return age.completedMonths() == 0 ? days : Texts.text("plan.read.span", DateText.of(age), days);
    }

    private Optional<ReadAngle> latest(boolean fromTheSide) {
        return read.stream().filter(one -> one.fromTheSide() == fromTheSide).max(Comparator.comparing(ReadAngle::on));
    }

    /** From the angles typed. */
    Sheet.Part of(BoneDeformity deformity) {
        var drawn = TruePlane.byRectangle(deformity.varus(), deformity.procurvatum());
        return new Sheet.Gathered()
                .with("plan.cut.frontal", from(false, deformity.varus(), QuantityText.ofDeviation(deformity.varus())))
                .with(
                        "plan.cut.sagittal",
                        from(
                                true,
                                deformity.procurvatum(),
                                OsteotomySheet.directed(
                                        deformity.procurvatum(), "plan.cut.procurvatum", "plan.cut.recurvatum")))
                .with(
                        "plan.cut.torsion",
                        OsteotomySheet.directed(deformity.internalTorsion(), "plan.cut.internal", "plan.cut.external"))
                .with("plan.cut.plane", of(deformity.truePlane()))
                .with("plan.cut.plane.drawn", of(drawn))
                .under("plan.cut.plane.heading");
    }

    /** The angle with where it comes from: a film that tells the same, or the person who typed it. */
    private String from(boolean fromTheSide, Angle angle, String words) {
        return read.stream()
                .filter(one -> one.fromTheSide() == fromTheSide && one.tenths() == angle.degrees())
                .max(Comparator.comparing(ReadAngle::on))
                .map(one -> Texts.text(
                        "plan.read.as-read",
                        words,
                        Texts.text("plan.Bone." + one.bone().name()),
                        DateText.of(one.on())))
                .orElseGet(() -> Texts.text("plan.read.typed", words));
    }

    private static String of(TruePlane plane) {
        return Texts.text(
                "plan.cut.plane.of",
                plane.angulation().degrees(),
                plane.fromFrontal().degrees());
    }
}
