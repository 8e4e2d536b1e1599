package org.espalier.today;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * What waits in the care of children at one hospital.
 *
 * @param theatre the days of the week to come with children in theatre, the nearest first
 * @param nearTarget whose target comes within the time theatre takes, nothing asked for; the earliest day to list first
 * @param late late or without a date, the worst harm of waiting first
 * @param toRemind how many families are to be reminded of their date
 * @param toFilm who has a film to be taken today, by name of nothing: the order that was asked for first comes first
 * @param notTaken films asked for on a day gone by and not taken, the oldest first
 * @param plates placed since the last clinic, the newest first
 * @param lastClinic the last day before today on which a child came
 */
public record CareToday(
        List<TheatreDay> theatre,
        Listed<NearTarget> nearTarget,
        Listed<Dated> late,
        long toRemind,
        Listed<Dated> toFilm,
        Listed<Dated> notTaken,
        Listed<Dated> plates,
        Optional<LocalDate> lastClinic) {

    public CareToday {
        theatre = List.copyOf(theatre);
    }

    public boolean isEmpty() {
        return theatre.isEmpty()
                && nearTarget.isEmpty()
                && late.isEmpty()
                && toRemind == 0
                && toFilm.isEmpty()
                && notTaken.isEmpty()
                && plates.isEmpty();
    }
}
