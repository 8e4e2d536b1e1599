package org.espalier.course;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.espalier.film.Film;
import org.espalier.film.FilmState;
import org.espalier.followup.Visits;
import org.espalier.kit.Who;
import org.espalier.patient.Child;
import org.espalier.patient.Examination;
import org.espalier.prognosis.Prognosis;
import org.espalier.reading.Reading;
import org.espalier.science.quantity.Age;
import org.espalier.treatment.ScrewSighting;
import org.espalier.treatment.Treatment;

/**
 * Everything that is known of one child's limbs over time.
 *
 * @param today the day it was looked at, by the hospital's zone
 * @param zone the hospital's zone
 * @param films every film of the child, the earliest first; those without a day last
 * @param examination what was measured and found on the child itself
 * @param visits the open visit and those that are over
 * @param treatment what was done and what holds
 * @param prognosis where the limbs are going while a plate is in
 */
public record Course(
        Child child,
        LocalDate today,
        ZoneId zone,
        List<FilmOfCourse> films,
        Examination examination,
        Visits visits,
        Treatment treatment,
        Optional<Prognosis> prognosis) {

    /**
     * One film with what was read from it.
     *
     * @param readings every signed reading, the newest first, superseded ones too
     */
    public record FilmOfCourse(Film film, List<Reading> readings) {

        public FilmOfCourse {
            readings = List.copyOf(readings);
        }

        public Optional<LocalDate> day() {
            return film.takenOn();
        }

        /** The readings that stand, the newest first. */
        public List<Reading> standing() {
            return readings.stream().filter(Reading::counts).toList();
        }

        public boolean isShown() {
            return film.state() == FilmState.READY;
        }
    }

    public Course {
        films = List.copyOf(films);
    }

    /** What signed readings say of the screws of plates, the first film first. */
    public List<ScrewSighting> screws() {
        var dated = films.stream().filter(one -> one.day().isPresent()).toList();
        return ScrewSighting.of(
                dated.stream().flatMap(one -> one.readings().stream()).toList(),
                dated.stream().collect(Collectors.toMap(one -> one.film().id(), one -> one.day()
                        .orElseThrow())));
    }

    /** From when ages are counted; for a reader who may not know the day, the first of the month. */
    public LocalDate birth() {
        return switch (child.who()) {
            case Who.Named named -> named.birthDate();
            case Who.Initialled initialled -> initialled.birthMonth().atDay(1);
        };
    }

    /** The age on a day; empty before birth. */
    public Optional<Age> ageOn(LocalDate day) {
        return day.isBefore(birth()) ? Optional.empty() : Optional.of(Age.between(birth(), day));
    }
}
