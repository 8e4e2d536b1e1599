package org.espalier.cost;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.espalier.access.SiteId;
import org.espalier.access.SiteService;
import org.espalier.film.FilmId;
import org.espalier.film.FilmService;
import org.espalier.followup.RecallService;
import org.espalier.followup.VisitService;
import org.espalier.patient.ChildId;
import org.espalier.patient.ExaminationService;
import org.espalier.stock.UseService;
import org.espalier.treatment.Procedure;
import org.espalier.treatment.ProcedureId;
import org.espalier.treatment.TreatmentService;
import org.springframework.stereotype.Component;

/** Reads facts where they are kept and says what the rules claim for them. */
@Component
class FactClaims {

    private final TreatmentService treatments;
    private final UseService uses;
    private final VisitService visits;
    private final RecallService recall;
    private final FilmService films;
    private final ExaminationService examinations;
    private final JdbcAllowanceRepository allowances;
    private final SiteService sites;

    FactClaims(
            TreatmentService treatments,
            UseService uses,
            VisitService visits,
            RecallService recall,
            FilmService films,
            ExaminationService examinations,
            JdbcAllowanceRepository allowances,
            SiteService sites) {
        this.treatments = treatments;
        this.uses = uses;
        this.visits = visits;
        this.recall = recall;
        this.films = films;
        this.examinations = examinations;
        this.allowances = allowances;
        this.sites = sites;
    }

    List<Claim> procedures(ChildId child, SiteId site) {
        var treatment = treatments.of(child);
        var rules = new ProcedureRules(treatment.standing(), new AllowanceBook(allowances.all(site)));
        Map<ProcedureId, Procedure> written =
                treatment.procedures().stream().collect(Collectors.toMap(Procedure::id, one -> one));
        return treatment.standing().stream()
                .filter(one -> isOf(site, one, written))
                .flatMap(one -> one
                        .data()
                        .map(data -> rules.of(
                                new ProcedureRules.Done(one.id().value(), one.on(), data, pieces(one, written))))
                        .orElse(List.of())
                        .stream())
                .toList();
    }

    /** An operation belongs to the hospital that recorded it first; one that corrects it later owes nothing for it. */
    private static boolean isOf(SiteId site, Procedure procedure, Map<ProcedureId, Procedure> written) {
        var first = Procedure.first(List.copyOf(written.values()), procedure.id());
        return Optional.ofNullable(written.get(first))
                .filter(one -> one.site().equals(site))
                .isPresent();
    }

    List<Claim> visits(ChildId child) {
        return ClinicRules.visits(visits.of(child));
    }

    List<Claim> letters(ChildId child) {
        return ClinicRules.letters(child, recall.attempts(child));
    }

    Optional<Claim> film(FilmId film, SiteId site) {
        var zone = sites.get(site).zone();
        return films.find(film).flatMap(found -> ClinicRules.film(found, zone));
    }

    /** All that is claimed for the child, for a job of the house. */
    List<Claim> all(ChildId child, SiteId site) {
        var zone = sites.get(site).zone();
        var ofFilms = films.of(child).stream().flatMap(film -> ClinicRules.film(film, zone).stream());
        var ofImaging = ClinicRules.imaging(examinations.of(child).imaging()).stream();
        return Stream.of(
                        procedures(child, site).stream(),
                        visits(child).stream(),
                        letters(child).stream(),
                        ofFilms,
                        ofImaging)
                .flatMap(claims -> claims)
                .toList();
    }

    /** What was taken for the procedure, and for those it stands in place of. */
    private List<Piece> pieces(Procedure procedure, Map<ProcedureId, Procedure> written) {
        var holders = new ArrayList<UUID>();
        var next = Optional.of(procedure);
        while (next.isPresent()) {
            holders.add(next.get().id().value());
            next = next.get().supersedes().map(written::get);
        }
        return holders.stream()
                .flatMap(holder -> uses.ofHolder(holder).stream())
                .flatMap(movement -> Piece.of(movement).stream())
                .toList();
    }
}
