package org.espalier.today;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.espalier.film.FilmProtocol;
import org.espalier.patient.Child;
import org.espalier.prognosis.Arrival;
import org.espalier.science.forecast.Deformity;
import org.espalier.science.quantity.Angle;
import org.espalier.treatment.PhysisKey;

/**
 * A child one of whose growth plates comes to its target before theatre could come.
 *
 * @param listBy the day by which theatre is to be asked for
 * @param plate the growth plate that comes first; empty where no forecast stands any more
 * @param filmsMissing films asked for and not taken, the oldest first
 * @param dateMissing whether the next look has no date
 */
public record NearTarget(
        Child child, LocalDate listBy, Optional<Plate> plate, List<MissingFilm> filmsMissing, boolean dateMissing) {

    public NearTarget {
        filmsMissing = List.copyOf(filmsMissing);
    }

    /**
     * Where the growth plate stands today, by forecast.
     *
     * @param corrects the deformity of which the degrees are left
     * @param left in the middle; below zero past the target
     * @param least of twenty such limbs one has less left
     * @param most of twenty such limbs one has more left
     * @param lastFilm the last film with the plate; empty where none was read
     */
    public record Plate(
            PhysisKey physis,
            Deformity corrects,
            Angle left,
            Angle least,
            Angle most,
            Arrival arrival,
            Optional<LocalDate> lastFilm) {}

    /** A film that was asked for and is not taken. */
    public record MissingFilm(FilmProtocol protocol, LocalDate askedOn, LocalDate forDay) {}
}
