package org.espalier.course;

import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.espalier.access.SiteService;
import org.espalier.film.FilmId;
import org.espalier.film.FilmService;
import org.espalier.followup.VisitService;
import org.espalier.patient.Child;
import org.espalier.patient.ChildId;
import org.espalier.patient.ExaminationService;
import org.espalier.patient.PatientService;
import org.espalier.prognosis.PlatesInCourse;
import org.espalier.reading.Reading;
import org.espalier.reading.ReadingService;
import org.espalier.treatment.TreatmentService;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Reads the course of a child in few statements and writes the look down once. */
@Service
@Transactional
public class CourseService {

    private final PatientService patients;
    private final FilmService films;
    private final ReadingService readings;
    private final ExaminationService examinations;
    private final VisitService visits;
    private final TreatmentService treatments;
    private final PlatesInCourse plates;
    private final SiteService sites;
    private final Clock clock;

    CourseService(
            PatientService patients,
            FilmService films,
            ReadingService readings,
            ExaminationService examinations,
            VisitService visits,
            TreatmentService treatments,
            PlatesInCourse plates,
            SiteService sites,
            Clock clock) {
        this.patients = patients;
        this.films = films;
        this.readings = readings;
        this.examinations = examinations;
        this.visits = visits;
        this.treatments = treatments;
        this.plates = plates;
        this.sites = sites;
        this.clock = clock;
    }

    /** The course of a child; empty when there is none that the caller may see. */
    public Optional<Course> open(ChildId id) {
        return patients.open(id, "course").map(this::course);
    }

    /** The course of a child for a print; written down as such. */
    public Optional<Course> print(ChildId id) {
        return patients.open(id, "course-print").map(this::course);
    }

    private Course course(Child child) {
        var readings = readingsOf(child);
        Map<FilmId, List<Reading>> byFilm = readings.stream().collect(Collectors.groupingBy(Reading::film));
        var taken = films.of(child.id());
        var site = sites.get(child.site());
        var examination = examinations.of(child.id());
        var treatment = treatments.of(child.id());
        return new Course(
                child,
                LocalDate.ofInstant(clock.instant(), site.zone()),
                site.zone(),
                taken.stream()
                        .map(film -> new Course.FilmOfCourse(film, byFilm.getOrDefault(film.id(), List.of())))
                        .toList(),
                examination,
                visits.of(child.id()),
                treatment,
                plates.of(child, examination, treatment, taken, readings));
    }

    private List<Reading> readingsOf(Child child) {
        return readings.ofChild(child.site(), child.id());
    }
}
