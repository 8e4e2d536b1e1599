package org.espalier.cost;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.espalier.film.Film;
import org.espalier.film.FilmKind;
import org.espalier.followup.Attempt;
import org.espalier.followup.Channel;
import org.espalier.followup.Closing;
import org.espalier.followup.Visit;
import org.espalier.followup.VisitStep;
import org.espalier.followup.Visits;
import org.espalier.patient.ChildId;
import org.espalier.patient.Fact;
import org.espalier.patient.History;
import org.espalier.patient.ImagingReport;

/** What visits, films, letters and pictures in layers cost by rule. */
final class ClinicRules {

    private ClinicRules() {}

    /**
     * A visit is charged when the child came for it, and as missed when not brought; an operation is no visit beside.
     */
    static List<Claim> visits(Visits visits) {
        var byProcedure = visits.steps().stream()
                .filter(step -> step.source() == VisitStep.Source.PROCEDURE)
                .map(VisitStep::visit)
                .collect(Collectors.toSet());
        return visits.past().stream()
                .filter(visit -> !byProcedure.contains(visit.id()))
                .flatMap(visit -> visit.closing().stream().flatMap(closing -> visit(visit, closing)))
                .toList();
    }

    private static Stream<Claim> visit(Visit visit, Closing closing) {
        var fact = visit.id().value();
        return switch (closing.state()) {
            case ARRIVED ->
                Stream.of(Claim.one(ChargeSource.VISIT, fact, ChargeRule.CAME, TariffItem.VISIT, closing.on()));
            case NOT_BROUGHT ->
                Stream.of(Claim.one(
                        ChargeSource.VISIT, fact, ChargeRule.NOT_BROUGHT, TariffItem.MISSED_VISIT, closing.on()));
            default -> Stream.empty();
        };
    }

    /**
     * A film that came from an X-ray machine; a photograph of one was taken elsewhere. Without a day, when it arrived.
     */
    static Optional<Claim> film(Film film, ZoneId zone) {
        var on = film.takenOn().orElseGet(() -> LocalDate.ofInstant(film.receivedAt(), zone));
        return film.kind() == FilmKind.DICOM
                ? Optional.of(
                        Claim.one(ChargeSource.FILM, film.id().value(), ChargeRule.FILM_TAKEN, TariffItem.FILM, on))
                : Optional.empty();
    }

    /** All letters of one day together. */
    static List<Claim> letters(ChildId child, List<Attempt> attempts) {
        Map<LocalDate, Long> byDay = attempts.stream()
                .filter(attempt -> attempt.channel() == Channel.LETTER)
                .collect(Collectors.groupingBy(Attempt::on, TreeMap::new, Collectors.counting()));
        return byDay.entrySet().stream()
                .map(day -> Claim.of(
                        ChargeSource.LETTER,
                        child.value(),
                        ChargeRule.LETTER_SENT,
                        TariffItem.LETTER,
                        null,
                        day.getKey(),
                        BigDecimal.valueOf(day.getValue())))
                .toList();
    }

    static List<Claim> imaging(History<ImagingReport> reports) {
        return reports.standing().stream().flatMap(ClinicRules::imaging).toList();
    }

    private static Stream<Claim> imaging(Fact<ImagingReport> fact) {
        return Stream.ofNullable(fact.finding())
                .filter(report -> report.modality() == ImagingReport.Modality.MAGNETIC_RESONANCE)
                .map(report -> Claim.one(
                        ChargeSource.IMAGING, fact.id().value(), ChargeRule.MRI_REPORTED, TariffItem.MRI, report.on()));
    }
}
