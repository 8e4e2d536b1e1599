package org.espalier.film;

import java.time.Clock;
import java.time.LocalDate;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import org.espalier.access.SiteId;
import org.espalier.access.SiteService;
import org.espalier.patient.Child;
import org.espalier.patient.ChildId;
import org.espalier.patient.PatientService;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Films that are asked for, and what became of each. An order is a fact: it is ended by another, never changed. */
@Service
@Transactional
public class FilmOrderService {

    private final FilmOrderRepository orders;
    private final FilmOrderStepRepository steps;
    private final FilmRepository films;
    private final PatientService patients;
    private final SiteService sites;
    private final ObjectProvider<ExpectedChildren> appointments;
    private final Clock clock;

    FilmOrderService(
            FilmOrderRepository orders,
            FilmOrderStepRepository steps,
            FilmRepository films,
            PatientService patients,
            SiteService sites,
            ObjectProvider<ExpectedChildren> appointments,
            Clock clock) {
        this.orders = orders;
        this.steps = steps;
        this.films = films;
        this.patients = patients;
        this.sites = sites;
        this.appointments = appointments;
        this.clock = clock;
    }

    /**
     * Asks for a film of a child, or says that none is needed. Sent again with the same id it is kept once.
     *
     * @throws IllegalArgumentException if there is no such child at a hospital of the caller, or the day is over
     */
    public void order(FilmOrderId id, ChildId child, LocalDate forDay, FilmWish wish) {
        var found = patients.open(child, "film order")
                .orElseThrow(() -> new IllegalArgumentException("no such child: " + child));
        var today = sites.today(found.site());
        if (forDay.isBefore(today)) {
            throw new IllegalArgumentException("A film is asked for today or later, not for " + forDay);
        }
        orders.add(id, found, today, forDay, wish, clock.instant());
    }

    /**
     * Writes down what happened to an order. Sent again with the same id it is kept once.
     *
     * @return false when the order had ended before; nothing is kept then
     */
    public boolean happened(FilmOrderId order, UUID id, FilmHappening what) {
        return steps.add(order, id, what, clock.instant());
    }

    /** All that was asked for of a child, the latest first. */
    public List<FilmOrder> of(ChildId child) {
        return orders.of(child);
    }

    /**
     * The radiographer's list: who comes on the day or has a film to be taken then. Films still open from days before
     * stand on the list of today.
     */
    public List<WorklistLine> worklist(SiteId site, LocalDate day) {
        boolean today = day.equals(sites.today(site));
        var byChild = new LinkedHashMap<ChildId, List<FilmOrder>>();
        orders.on(site, day, today).stream()
                .collect(Collectors.groupingBy(FilmOrder::child, LinkedHashMap::new, Collectors.toList()))
                .forEach(byChild::put);
        var expected = new LinkedHashSet<ChildId>();
        appointments.orderedStream().forEach(kept -> expected.addAll(kept.expected(site, day)));
        expected.forEach(child -> byChild.putIfAbsent(child, List.of()));
        return lines(site, byChild, expected);
    }

    private List<WorklistLine> lines(SiteId site, Map<ChildId, List<FilmOrder>> byChild, Collection<ChildId> expected) {
        var taken = films.countOf(site, byChild.keySet());
        return patients.all(site, byChild.keySet(), "worklist").stream()
                .map(child -> new WorklistLine(
                        child,
                        byChild.getOrDefault(child.id(), List.of()),
                        expected.contains(child.id()),
                        taken.getOrDefault(child.id(), 0L)))
                .sorted(Comparator.comparing(FilmOrderService::isDone).thenComparing(line -> nameOf(line.child())))
                .toList();
    }

    private static boolean isDone(WorklistLine line) {
        return line.orders().stream().noneMatch(FilmOrder::isOpen);
    }

    private static String nameOf(Child child) {
        return child.data()
                .map(data -> data.familyName() + " " + data.givenName())
                .orElse("");
    }
}
