package org.espalier.treatment;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.espalier.access.SiteId;
import org.espalier.film.Film;
import org.espalier.film.FilmService;
import org.espalier.patient.BoneAge;
import org.espalier.patient.ChildId;
import org.espalier.patient.ExaminationService;
import org.espalier.patient.PatientService;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** The theatre list of a day, and what is known of a child before theatre. */
@Service
@Transactional
public class TheatreService {

    private final JdbcTreatmentFactRepository facts;
    private final TreatmentReader reader;
    private final SideCheck sides;
    private final PatientService patients;
    private final ExaminationService examinations;
    private final FilmService films;

    TheatreService(
            JdbcTreatmentFactRepository facts,
            TreatmentReader reader,
            SideCheck sides,
            PatientService patients,
            ExaminationService examinations,
            FilmService films) {
        this.facts = facts;
        this.reader = reader;
        this.sides = sides;
        this.patients = patients;
        this.examinations = examinations;
        this.films = films;
    }

    /** Who has a place in theatre on the day, with the plans for that day that still wait. */
    public List<TheatreCase> list(SiteId site, LocalDate day) {
        return patients.all(site, facts.inTheatre(site, day), "theatre").stream()
                .map(child -> new TheatreCase(child, waiting(child.id(), day)))
                .filter(one -> !one.standing().isEmpty())
                .toList();
    }

    /** The first day after the given one on which somebody has a place in theatre. */
    public Optional<LocalDate> next(SiteId site, LocalDate day) {
        return facts.nextInTheatre(site, day);
    }

    /**
     * What the record knows of the child before theatre.
     *
     * @throws IllegalArgumentException when there is no such child that the caller may see
     */
    public TheatreFacts facts(ChildId child) {
        var site = reader.site(child).orElseThrow(() -> new IllegalArgumentException("no such child: " + child));
        var treatment = reader.treatment(child, site, reader.record(child));
        int years =
                patients.ageOn(child, treatment.today()).map(age -> age.years()).orElse(0);
        return new TheatreFacts(
                films.of(child).stream()
                        .map(Film::takenOn)
                        .flatMap(Optional::stream)
                        .max(Comparator.naturalOrder()),
                examinations.of(child).boneAges().latest().map(BoneAge::on),
                TheatreFacts.filmMonths(years),
                treatment.waiting().stream()
                        .flatMap(plan -> sides.check(treatment, plan.plan()).stream())
                        .toList());
    }

    private List<StandingPlan> waiting(ChildId child, LocalDate day) {
        return new Derivation(reader.record(child))
                .plans().stream()
                        .filter(StandingPlan::isWaiting)
                        .filter(plan -> day.equals(plan.plan().theatreOn()))
                        .toList();
    }
}
