package org.espalier.followup;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.espalier.access.SiteId;
import org.espalier.access.SiteService;
import org.espalier.followup.BookingLine.Effect;
import org.espalier.patient.Child;
import org.espalier.patient.ChildId;
import org.espalier.patient.PatientService;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.springframework.transaction.interceptor.TransactionAspectSupport;

/**
 * Takes dates and what became of them from the hospital's booking system. The same file taken twice changes nothing.
 */
@Service
@Transactional
public class BookingService {

    private final JdbcVisitRepository visits;
    private final VisitService service;
    private final PatientService patients;
    private final SiteService sites;

    BookingService(JdbcVisitRepository visits, VisitService service, PatientService patients, SiteService sites) {
        this.visits = visits;
        this.service = service;
        this.patients = patients;
        this.sites = sites;
    }

    /** What taking the file would do, row by row; nothing is kept. */
    public List<BookingLine> preview(SiteId site, String file) {
        var transaction = TransactionAspectSupport.currentTransactionStatus();
        var before = transaction.createSavepoint();
        var lines = taken(site, file);
        transaction.rollbackToSavepoint(before);
        return named(site, lines);
    }

    /** Takes the file: every row that can be read and belongs to a child in care; the others are explained. */
    public List<BookingLine> take(SiteId site, String file) {
        return named(site, taken(site, file));
    }

    private List<BookingLine> taken(SiteId site, String file) {
        var read = BookingFile.of(file);
        var taken = read.rows().stream().map(row -> take(site, row)).toList();
        return Stream.concat(taken.stream(), read.refused().stream())
                .sorted(Comparator.comparingLong(BookingLine::line))
                .toList();
    }

    /** The lines with the children whose numbers they bear; who was shown is written down. */
    private List<BookingLine> named(SiteId site, List<BookingLine> lines) {
        var whose = new HashMap<String, ChildId>();
        lines.stream()
                .map(BookingLine::number)
                .filter(number -> !number.isBlank())
                .distinct()
                .forEach(number -> patients.match(site, number, null).ifPresent(child -> whose.put(number, child)));
        Map<ChildId, Child> children = patients.all(site, whose.values(), "bookings").stream()
                .collect(Collectors.toMap(Child::id, Function.identity()));
        return lines.stream()
                .map(line -> line.withChild(
                        Optional.ofNullable(whose.get(line.number())).map(children::get)))
                .toList();
    }

    private BookingLine take(SiteId site, BookingRow row) {
        var child = patients.match(site, row.number(), null);
        if (child.isEmpty()) {
            return refused(row, BookingProblem.UNKNOWN_NUMBER);
        }
        if (row.outcome().isPresent() && row.on().isAfter(sites.today(site))) {
            return refused(row, BookingProblem.OUTCOME_TO_COME);
        }
        var known = visits.booked(site, row.booking());
        if (known.filter(visit -> !visit.child().equals(child.get())).isPresent()) {
            return refused(row, BookingProblem.OTHER_CHILD);
        }
        if (known.filter(visit -> !visit.isOpen()).isPresent()) {
            return BookingLine.of(row, Effect.UNCHANGED);
        }
        return openVisit(child.get())
                .map(open -> take(open, known.isPresent(), row))
                .orElseGet(() -> refused(row, BookingProblem.NOT_IN_CARE));
    }

    private BookingLine take(Visit open, boolean known, BookingRow row) {
        if (row.outcome().filter(BookingRow.Outcome.CANCELLED::equals).isPresent()) {
            return known
                    ? record(open, row, new Happening.DateTakenBack(VisitReason.NOT_SAID, ""), Effect.DATE_TAKEN_BACK)
                    : BookingLine.of(row, Effect.UNCHANGED);
        }
        boolean same = open.appointment().filter(row.appointment()::equals).isPresent();
        var booked = same ? open : booked(open, row);
        if (row.outcome().isEmpty()) {
            var given = open.appointment().isEmpty() ? Effect.DATE_GIVEN : Effect.DATE_MOVED;
            return BookingLine.of(row, same ? Effect.UNCHANGED : given);
        }
        return row.outcome().get() == BookingRow.Outcome.ARRIVED
                ? record(booked, row, new Happening.Arrived(row.on(), Optional.empty()), Effect.ARRIVED)
                : record(booked, row, notBrought(row), Effect.NOT_BROUGHT);
    }

    private Visit booked(Visit open, BookingRow row) {
        service.record(open, new Happening.Booked(row.appointment()), VisitStep.Source.BOOKING_FILE);
        return openVisit(open.child()).orElseThrow();
    }

    private BookingLine record(Visit visit, BookingRow row, Happening happening, Effect effect) {
        service.record(visit, happening, VisitStep.Source.BOOKING_FILE);
        return BookingLine.of(row, effect);
    }

    private Optional<Visit> openVisit(ChildId child) {
        return visits.findOpen(child);
    }

    private static Happening notBrought(BookingRow row) {
        return new Happening.NotBrought(row.on(), VisitReason.NOT_SAID, "");
    }

    private static BookingLine refused(BookingRow row, BookingProblem problem) {
        return BookingLine.refused(row.line(), row.number(), problem);
    }
}
