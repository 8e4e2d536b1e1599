package org.espalier.plan;

import java.time.LocalDate;
import java.util.List;
import org.espalier.film.FilmId;
import org.espalier.patient.Bone;
import org.espalier.science.planning.CutKind;
import org.espalier.science.quantity.Side;

/**
 * The film of a limb to be cut, and cuts to start from, not turned, that of the tibia first: a straight one across the
 * metaphysis with its hinge in the middle of the bone, a round one with the middle of the knee as its centre.
 *
 * @param takenOn the day it was taken
 */
public record CutFilm(FilmId film, LocalDate takenOn, Side side, List<Start> starts) {

    /** One of them. */
    public record Start(Bone bone, CutKind kind, CutRequest cut) {}

    public CutFilm {
        starts = List.copyOf(starts);
    }

    public CutRequest start() {
        return starts.getFirst().cut();
    }
}
