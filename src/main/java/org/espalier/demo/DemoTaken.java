package org.espalier.demo;

import java.util.List;
import java.util.stream.Stream;
import org.espalier.demo.drawn.DrawnFilm;
import org.espalier.demo.drawn.DrawnPlate;
import org.espalier.reading.FilmTaken;
import org.espalier.reading.LimbsShown;
import org.espalier.reading.ScrewSeen;
import org.espalier.reading.Seen;
import org.espalier.science.exposure.FilmConditions.Marker;
import org.espalier.science.exposure.FilmConditions.Ossification;
import org.espalier.science.exposure.FilmConditions.Patella;
import org.espalier.science.exposure.FilmConditions.Stance;
import org.espalier.science.exposure.FilmConditions.Technique;
import org.espalier.science.exposure.FilmConditions.View;
import org.espalier.science.quantity.Side;

/** How the films of the demonstration were taken, and what their reader says of each screw. */
final class DemoTaken {

    private static final int STANDS_ALONE_MONTHS = 36;
    private static final int PATELLA_SEEN_MONTHS = 36;

    private DemoTaken() {}

    static FilmTaken of(DrawnFilm film, int ageMonths) {
        var patella = ageMonths < PATELLA_SEEN_MONTHS ? Patella.NOT_OSSIFIED : Patella.FORWARD;
        return new FilmTaken(
                ageMonths < STANDS_ALONE_MONTHS ? Stance.STANDING_HELD : Stance.STANDING_ALONE,
                View.AP,
                Technique.ONE_SHOT,
                null,
                Seen.NO,
                film.contrast() ? Seen.YES : Seen.NO,
                Seen.NO,
                film.shown().map(DemoTaken::shown).orElse(LimbsShown.BOTH),
                null,
                null,
                patella,
                patella,
                0,
                0,
                film.ball().diameter().millimetres(),
                null,
                Marker.READABLE,
                ageMonths < PATELLA_SEEN_MONTHS ? Ossification.NOT_RECORDED : Ossification.OSSIFIED);
    }

    private static LimbsShown shown(Side side) {
        return side == Side.RIGHT ? LimbsShown.RIGHT : LimbsShown.LEFT;
    }

    /** Each screw of each plate on the film. */
    static List<ScrewSeen> screws(DemoVisit visit, DrawnFilm film) {
        return Stream.of(Side.values())
                .filter(side -> film.shown().filter(shown -> shown != side).isEmpty())
                .flatMap(side -> (side == Side.RIGHT ? visit.right() : visit.left())
                        .plates().stream().map(DemoTaken::plate).distinct().flatMap(plate -> Stream.of(
                                        ScrewSeen.Screw.values())
                                .map(screw -> seen(ScrewSeen.asked(side, plate, screw)))))
                .toList();
    }

    private static ScrewSeen.Plate plate(DrawnPlate plate) {
        return plate.bone() == DrawnPlate.Bone.FEMUR ? ScrewSeen.Plate.DISTAL_FEMUR : ScrewSeen.Plate.PROXIMAL_TIBIA;
    }

    private static ScrewSeen seen(ScrewSeen screw) {
        return screw.withExposed(Seen.NO).withBent(Seen.NO).withBroken(Seen.NO).withLoose(Seen.NO);
    }
}
