package org.espalier.opinion;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;
import org.espalier.access.SiteService;
import org.espalier.film.Film;
import org.espalier.film.FilmService;
import org.espalier.film.FilmState;
import org.espalier.film.PictureService;
import org.espalier.patient.Child;
import org.espalier.patient.ChildId;
import org.espalier.patient.ExaminationService;
import org.espalier.patient.Finding;
import org.espalier.patient.History;
import org.espalier.patient.PatientService;
import org.espalier.plan.PlanService;
import org.espalier.prognosis.PrognosisService;
import org.espalier.reading.Reading;
import org.espalier.reading.ReadingService;
import org.espalier.treatment.TreatmentService;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

/** Reads what of a child's course can be put before colleagues; days are gone, the months between them stay. */
@Component
class ShowableFacts {

    private final PatientService patients;
    private final ExaminationService examinations;
    private final FilmService films;
    private final PictureService pictures;
    private final ReadingService readings;
    private final TreatmentService treatments;
    private final PrognosisService prognoses;
    private final PlanService plans;
    private final SiteService sites;

    ShowableFacts(
            PatientService patients,
            ExaminationService examinations,
            FilmService films,
            PictureService pictures,
            ReadingService readings,
            TreatmentService treatments,
            PrognosisService prognoses,
            PlanService plans,
            SiteService sites) {
        this.patients = patients;
        this.examinations = examinations;
        this.films = films;
        this.pictures = pictures;
        this.readings = readings;
        this.treatments = treatments;
        this.prognoses = prognoses;
        this.plans = plans;
        this.sites = sites;
    }

    /** Empty when there is no such child that the caller may see. */
    Optional<Showable> of(ChildId id) {
        return patients.open(id, "opinion").map(child -> {
            var shown = films.of(id).stream()
                    .filter(film -> film.state() == FilmState.READY)
                    .toList();
            var first = shown.stream().flatMap(film -> film.takenOn().stream()).min(Comparator.naturalOrder());
            return new Reader(child, sites.today(child.site()), first.orElse(null)).showable(shown);
        });
    }

    private final class Reader {

        private final Child child;
        private final LocalDate today;
        private final @Nullable LocalDate first;
        private final FactSheets sheets;
        private final List<ShowableFact> facts = new ArrayList<>();

        Reader(Child child, LocalDate today, @Nullable LocalDate first) {
            this.child = child;
            this.today = today;
            this.first = first;
            sheets = new FactSheets(Identity.of(child.who()));
        }

        Showable showable(List<Film> shown) {
            add(derived("child"), FactKind.CHILD, today, FactSheets.child(child, today));
            examined();
            readings.ofChild(child.site(), child.id()).stream()
                    .filter(Reading::counts)
                    .forEach(reading -> shown.stream()
                            .filter(film -> film.id().equals(reading.film()))
                            .forEach(film -> add(
                                    reading.id().value(),
                                    FactKind.READING,
                                    film.takenOn().orElse(null),
                                    FactSheets.of(reading))));
            treated();
            prognoses.of(child.id()).ifPresent(prognosis -> prognosis.physes().stream()
                    .filter(physis ->
                            physis.last().isPresent() || physis.forecast().isPresent())
                    .forEach(physis -> add(
                            derived("forecast " + physis.physis() + today),
                            FactKind.FORECAST,
                            today,
                            FactSheets.of(physis, today))));
            facts.sort(Comparator.comparing(ShowableFact::kind)
                    .thenComparing(fact -> Objects.requireNonNullElse(fact.months(), Integer.MAX_VALUE)));
            return new Showable(
                    child,
                    shown.stream()
                            .map(film ->
                                    new ShowableFilm(film, months(film.takenOn().orElse(null))))
                            .toList(),
                    pictures(),
                    facts);
        }

        /** The first first, as the films are. */
        private List<ShowablePicture> pictures() {
            return pictures.of(child.id()).reversed().stream()
                    .filter(picture -> picture.withdrawn().isEmpty())
                    .map(picture -> new ShowablePicture(picture, months(picture.takenOn())))
                    .toList();
        }

        private void examined() {
            var all = examinations.of(child.id());
            add(all.diagnoses(), FactKind.DIAGNOSIS, sheets::of);
            add(all.visits(), FactKind.EXAMINATION, sheets::of);
            add(all.sizes(), FactKind.BODY_SIZE, FactSheets::of);
            add(all.boneAges(), FactKind.BONE_AGE, FactSheets::of);
            add(all.labs(), FactKind.LABORATORY, sheets::of);
            add(all.imaging(), FactKind.IMAGING, sheets::of);
        }

        private void treated() {
            var treatment = treatments.of(child.id());
            treatment.standing().forEach(procedure -> procedure
                    .data()
                    .ifPresent(data ->
                            add(procedure.id().value(), FactKind.PROCEDURE, procedure.on(), FactSheets.of(data))));
            treatment
                    .waiting()
                    .forEach(plan ->
                            add(plan.id().value(), FactKind.PLAN, plan.plan().on(), sheets.of(plan.plan())));
            plans.saved(child.id())
                    .reversed()
                    .forEach(kept -> add(
                            kept.id().value(),
                            FactKind.COMPARISON,
                            kept.on(),
                            ComparisonSheet.of(kept, sheets, first)));
        }

        private <F extends Finding> void add(History<F> history, FactKind kind, Function<F, FactSheet> sheet) {
            history.standing().forEach(fact -> {
                var finding = fact.finding();
                if (finding != null) {
                    add(fact.id().value(), kind, fact.on(), sheet.apply(finding));
                }
            });
        }

        private void add(UUID source, FactKind kind, @Nullable LocalDate on, FactSheet sheet) {
            facts.add(new ShowableFact(source, kind, months(on), sheet));
        }

        private @Nullable Integer months(@Nullable LocalDate on) {
            return on == null || first == null ? null : Math.toIntExact(ChronoUnit.MONTHS.between(first, on));
        }

        private UUID derived(String what) {
            return UUID.nameUUIDFromBytes((child.id().value() + what).getBytes(StandardCharsets.UTF_8));
        }
    }
}
