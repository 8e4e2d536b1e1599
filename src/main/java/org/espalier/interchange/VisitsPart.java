package org.espalier.interchange;

import java.time.LocalDate;
import java.time.LocalTime;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.espalier.followup.Appointment;
import org.espalier.followup.Closing;
import org.espalier.followup.EarlierVisit;
import org.espalier.followup.EarlierVisits;
import org.espalier.followup.EndReason;
import org.espalier.followup.Visit;
import org.espalier.followup.VisitOutcome;
import org.espalier.followup.VisitReason;
import org.espalier.followup.VisitService;
import org.espalier.followup.VisitState;
import org.espalier.followup.Visits;
import org.espalier.patient.ChildId;
import org.jspecify.annotations.Nullable;
import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;

/**
 * Visits in the order they were: those that are over, then the open one. Taken last, when all they rest on is there.
 */
@Component
@Order(8)
class VisitsPart implements ClinicPart {

    private static final Map<String, VisitState> STATES = Words.all(VisitState.class);
    private static final Map<String, VisitReason> REASONS = Words.all(VisitReason.class);
    private static final Map<String, EndReason> ENDS = Words.all(EndReason.class);

    private final VisitService visits;
    private final EarlierVisits earlier;

    VisitsPart(VisitService visits, EarlierVisits earlier) {
        this.visits = visits;
        this.earlier = earlier;
    }

    @Override
    public void take(Taking taking) {
        taking.rows(ClinicFile.VISITS).stream()
                .collect(
                        Collectors.groupingBy(row -> row.text("local_number"), LinkedHashMap::new, Collectors.toList()))
                .values()
                .forEach(rows -> ofChild(taking, rows));
    }

    private void ofChild(Taking taking, List<ClinicRow> rows) {
        Optional<ChildId> child =
                Optional.ofNullable(taking.children().get(rows.getFirst().text("local_number")));
        if (child.isEmpty()) {
            rows.forEach(row -> taking.take(row, () -> {
                taking.child(row);
                return Effect.KNOWN;
            }));
            return;
        }
        var before = visits.of(child.get());
        var known = before.past().stream()
                .flatMap(visit -> visit.closing().stream())
                .map(VisitsPart::told)
                .collect(Collectors.toCollection(ArrayList::new));
        var last = before.past().stream().findFirst().map(Visit::day);
        var count = new int[1];
        for (var row : rows) {
            taking.take(row, () -> take(taking, child.get(), row, known, last, count));
        }
    }

    private Effect take(
            Taking taking, ChildId child, ClinicRow row, List<String> known, Optional<LocalDate> last, int[] taken) {
        var state = row.cells().oneOf("state", STATES);
        if (state.isEmpty()) {
            return Effect.KNOWN;
        }
        if (state.get() == VisitState.PLANNED || state.get() == VisitState.BOOKED) {
            return open(child, row, state.get(), taken[0] > 0);
        }
        var on = row.cells().date("date");
        if (on.isEmpty() || known.remove(told(state.get(), on.get()))) {
            return Effect.KNOWN;
        }
        if (last.filter(on.get()::isBefore).isPresent()) {
            throw new RowRefused("date", FileReason.VISIT_BETWEEN, last.get());
        }
        over(taking, child, row, state.get(), on.get());
        taken[0]++;
        return Effect.NEW;
    }

    private void over(Taking taking, ChildId child, ClinicRow row, VisitState state, LocalDate on) {
        boolean ended = state == VisitState.CARE_ENDED;
        Optional<VisitReason> reason = ended || row.cells().isEmpty("reason")
                ? Optional.empty()
                : row.cells().oneOf("reason", REASONS);
        Optional<EndReason> end =
                ended && !row.cells().isEmpty("reason") ? row.cells().oneOf("reason", ENDS) : Optional.empty();
        var visit = new EarlierVisit(state, on, reason, row.text("note"), end, asked(row));
        switch (earlier.add(child, taking.site(), visit)) {
            case VisitOutcome.Done done -> {}
            case VisitOutcome.NotSeenClosed closed -> throw new RowRefused("reason", FileReason.NOT_SEEN_CLOSED);
            case VisitOutcome.ImplantIn in -> throw new RowRefused("reason", FileReason.STILL_IN);
            case VisitOutcome.ChangedMeanwhile changed ->
                throw new RowRefused("state", FileReason.VISIT_CHANGED_MEANWHILE);
            case VisitOutcome.NextMissing missing -> throw new RowRefused("state", FileReason.NEXT_VISIT_MISSING);
        }
    }

    /** The open visit is set right when visits were taken before it, or nobody has touched it yet; else it stays. */
    private Effect open(ChildId child, ClinicRow row, VisitState state, boolean after) {
        Optional<Appointment> appointment = state == VisitState.BOOKED ? appointment(row) : Optional.empty();
        var asked = asked(row);
        var now = visits.of(child);
        var open = now.open();
        if (open.isEmpty()) {
            throw new RowRefused("state", FileReason.CARE_ENDED);
        }
        boolean same =
                open.get().asked().equals(asked) && open.get().appointment().equals(appointment);
        boolean untouched = now.past().isEmpty() && open.get().appointment().isEmpty();
        if (same || !after && !untouched) {
            return Effect.KNOWN;
        }
        earlier.leaveOpen(child, asked, appointment);
        return Effect.NEW;
    }

    private static Optional<Appointment> appointment(ClinicRow row) {
        return row.cells().date("date").map(on -> new Appointment(on, time(row), row.textOrNull("booking")));
    }

    private static @Nullable LocalTime time(ClinicRow row) {
        try {
            return row.cells().isEmpty("time") ? null : LocalTime.parse(row.text("time"));
        } catch (DateTimeParseException e) {
            row.cells().refuse("time", FileReason.NOT_A_TIME, row.text("time"));
            return null;
        }
    }

    private static Optional<Visit.Asked> asked(ClinicRow row) {
        return row.cells().isEmpty("asked_by")
                ? Optional.empty()
                : row.cells()
                        .date("asked_by")
                        .flatMap(by -> row.cells().name("asked_why").map(why -> new Visit.Asked(by, why)));
    }

    private static String told(Closing closing) {
        return told(closing.state(), closing.on());
    }

    private static String told(VisitState state, LocalDate on) {
        return state + " " + on;
    }

    @Override
    public Map<ClinicFile, List<List<String>>> rows(Giving giving) {
        List<List<String>> rows = new ArrayList<>();
        for (var one : giving.children()) {
            var all = visits.of(one.child().id());
            for (var visit : all.all().reversed()) {
                rows.add(row(one.number(), visit, all));
            }
        }
        return Map.of(ClinicFile.VISITS, rows);
    }

    private static List<String> row(String number, Visit visit, Visits all) {
        Map<String, String> cells = new LinkedHashMap<>();
        cells.put("local_number", number);
        cells.put("state", Words.of(visit.state()));
        cells.put(
                "date",
                visit.closing()
                        .map(Closing::on)
                        .or(() -> visit.appointment().map(Appointment::on))
                        .map(LocalDate::toString)
                        .orElse(""));
        if (visit.isOpen()) {
            cells.put(
                    "time",
                    visit.appointment()
                            .flatMap(Appointment::time)
                            .map(LocalTime::toString)
                            .orElse(""));
            cells.put(
                    "booking",
                    visit.appointment()
                            .map(given -> Words.text(given.booking()))
                            .orElse(""));
        }
        cells.put("reason", reason(visit, all));
        cells.put("note", visit.closing().flatMap(Closing::note).orElse(""));
        cells.put("asked_by", visit.asked().map(asked -> asked.by().toString()).orElse(""));
        cells.put("asked_why", visit.asked().map(Visit.Asked::why).orElse(""));
        return Giving.row(cells, ClinicFile.VISITS);
    }

    /** Of the end of care that stands, why it ended. */
    private static String reason(Visit visit, Visits all) {
        if (visit.state() == VisitState.CARE_ENDED) {
            return all.end().flatMap(end -> end.reason()).map(Words::of).orElse("");
        }
        return visit.closing().flatMap(Closing::reason).map(Words::of).orElse("");
    }
}
