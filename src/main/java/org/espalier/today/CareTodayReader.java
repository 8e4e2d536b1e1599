package org.espalier.today;

import java.time.LocalDate;
import java.time.Period;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.stream.Stream;
import org.espalier.access.CurrentStaff;
import org.espalier.access.Role;
import org.espalier.access.SiteId;
import org.espalier.patient.Child;
import org.espalier.patient.ChildId;
import org.springframework.stereotype.Component;

/** Reads what waits in the care of children, for the roles the caller holds at a hospital. */
@Component
class CareTodayReader {

    /** Whoever reaches the target within this time is to be listed now: so long theatre may take. */
    private static final Period NEAR = Period.ofWeeks(8);

    private static final Period THEATRE_AHEAD = Period.ofDays(7);

    /** Where no child came yet, plates of this time are shown. */
    private static final Period WITHOUT_CLINIC = Period.ofDays(28);

    private static final int MOST = 8;

    private final JdbcCareTodayRepository waiting;
    private final NearTargetReader nearTarget;
    private final CurrentStaff currentStaff;

    CareTodayReader(JdbcCareTodayRepository waiting, NearTargetReader nearTarget, CurrentStaff currentStaff) {
        this.waiting = waiting;
        this.nearTarget = nearTarget;
        this.currentStaff = currentStaff;
    }

    /** What waits, before the children are named. */
    record Found(
            List<TheatreDay> theatre,
            List<JdbcCareTodayRepository.Row> nearTarget,
            List<JdbcCareTodayRepository.Row> late,
            long toRemind,
            List<JdbcCareTodayRepository.Row> toFilm,
            List<JdbcCareTodayRepository.Row> notTaken,
            List<JdbcCareTodayRepository.Row> plates,
            Optional<LocalDate> lastClinic) {

        Stream<ChildId> children() {
            return Stream.of(nearTarget, late, toFilm, notTaken, plates)
                    .flatMap(List::stream)
                    .map(JdbcCareTodayRepository.Row::child);
        }
    }

    Found at(SiteId site, LocalDate today) {
        boolean surgeon = currentStaff.has(Role.SURGEON, site);
        boolean follows = surgeon || currentStaff.has(Role.NURSE, site);
        boolean films = currentStaff.has(Role.RADIOGRAPHER, site);
        var lastClinic = waiting.lastClinic(site, today);
        return new Found(
                follows ? waiting.theatre(site, today, today.plus(THEATRE_AHEAD)) : List.of(),
                surgeon ? waiting.nearTarget(site, today.plus(NEAR), MOST) : List.of(),
                follows ? waiting.late(site, today, MOST) : List.of(),
                follows ? waiting.toRemind(site, today) : 0,
                films ? waiting.filmsOf(site, today, MOST) : List.of(),
                surgeon || films ? waiting.filmsNotTaken(site, today, MOST) : List.of(),
                surgeon
                        ? waiting.platesSince(site, lastClinic.orElseGet(() -> today.minus(WITHOUT_CLINIC)), MOST)
                        : List.of(),
                lastClinic);
    }

    CareToday named(Found found, Map<ChildId, Child> names) {
        return new CareToday(
                found.theatre(),
                listed(found.nearTarget(), names, nearTarget::of),
                dated(found.late(), names),
                found.toRemind(),
                dated(found.toFilm(), names),
                dated(found.notTaken(), names),
                dated(found.plates(), names),
                found.lastClinic());
    }

    private static Listed<Dated> dated(List<JdbcCareTodayRepository.Row> rows, Map<ChildId, Child> names) {
        return listed(rows, names, (child, row) -> new Dated(child, row.day(), row.about()));
    }

    private static <T> Listed<T> listed(
            List<JdbcCareTodayRepository.Row> rows,
            Map<ChildId, Child> names,
            BiFunction<Child, JdbcCareTodayRepository.Row, T> line) {
        var shown = rows.stream()
                .flatMap(row -> Stream.ofNullable(names.get(row.child())).map(child -> line.apply(child, row)))
                .toList();
        return new Listed<>(shown, rows.isEmpty() ? 0 : rows.getFirst().all());
    }
}
