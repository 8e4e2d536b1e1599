package org.espalier.followup;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import org.espalier.access.SiteId;
import org.espalier.access.StaffId;
import org.espalier.patient.ChildId;
import org.espalier.prognosis.Past;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Visits, and what happened to them. */
@Repository
class JdbcVisitRepository {

    private static final String OPEN = """
            insert into visit (id, site_id, child_id, opened_for, opened_by, opened_at, asked_by, asked_why, look_by,
                list_by, decide_by, film, rule, rule_side, rule_bone, rule_bone_end, risk, risk_now, risk_in_a_month,
                harm, harm_reason, harm_side, harm_bone, harm_bone_end, harm_into, harm_low, harm_high)
            values (:visit, :site, :child, :openedFor, :by, :at, :askedBy, :askedWhy, :lookBy,
                :listBy, :decideBy, :film, :rule, :side, :bone, :boneEnd, :risk, :riskNow, :riskInAMonth,
                :harm, :harmReason, :harmSide, :harmBone, :harmBoneEnd, :harmInto, :harmLow, :harmHigh)
            """;
    private static final String POINT_TO = """
            update child set needs_visit = true, open_visit = :visit where id = :child
            """;
    private static final String LET_GO = """
            update child set needs_visit = false, open_visit = null where id = :child
            """;
    private static final String CLOSE = """
            update visit set version = version + 1, closed_at = :at, closed_by = :by, outcome = :outcome, outcome_on =
                :on,
                outcome_reason = :reason, outcome_note = :note
            where id = :visit and version = :version and closed_at is null
            """;
    private static final String BOOK = """
            update visit set version = version + 1, appointment_on = :on, appointment_at = :atTime, booking = :booking
            where id = :visit and version = :version and closed_at is null
            """;

    /** Leaves the version as it is: dates that move by themselves keep nobody from writing down what happened. */
    private static final String SET_DUE = """
            update visit set look_by = :lookBy, list_by = :listBy, decide_by = :decideBy,
                film = :film, rule = :rule, rule_side = :side, rule_bone = :bone, rule_bone_end = :boneEnd, risk =
                    :risk,
                risk_now = :riskNow, risk_in_a_month = :riskInAMonth, harm = :harm, harm_reason = :harmReason,
                harm_side = :harmSide, harm_bone = :harmBone, harm_bone_end = :harmBoneEnd, harm_into = :harmInto,
                harm_low = :harmLow, harm_high = :harmHigh, rules_mark = :mark
            where id = :visit and closed_at is null
            """;

    private static final String ASK = """
            update visit set version = version + 1, asked_by = :askedBy, asked_why = :askedWhy
            where id = :visit and closed_at is null
            """;
    private static final String ONE = "select " + VisitRows.COLUMNS + " from visit v where v.child_id = :child";
    private static final String OPEN_ONE = ONE + " and v.closed_at is null";
    private static final String PAST = ONE + " and v.closed_at is not null order by v.closed_at desc, v.id desc";
    private static final String BOOKED = "select " + VisitRows.COLUMNS + """
            from visit v where v.site_id = :site and v.booking = :booking order by v.closed_at desc nulls first limit 1
            """;

    private final JdbcClient jdbc;

    JdbcVisitRepository(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** Opens a visit that the child does not point to yet. */
    void open(
            VisitId visit,
            SiteId site,
            ChildId child,
            OpenedFor openedFor,
            @Nullable StaffId by,
            Instant at,
            Optional<Visit.Asked> asked,
            Due due) {
        due(jdbc.sql(OPEN), due)
                .param("visit", visit.value())
                .param("site", site.value())
                .param("child", child.value())
                .param("openedFor", openedFor.name())
                .param("by", by == null ? null : by.value())
                .param("at", at.atOffset(ZoneOffset.UTC))
                .param("askedBy", asked.map(Visit.Asked::by).orElse(null))
                .param("askedWhy", asked.map(Visit.Asked::why).orElse(null))
                .update();
    }

    void pointTo(ChildId child, VisitId visit) {
        jdbc.sql(POINT_TO)
                .param("child", child.value())
                .param("visit", visit.value())
                .update();
    }

    /** The child needs no visit any more. */
    void letGo(ChildId child) {
        jdbc.sql(LET_GO).param("child", child.value()).update();
    }

    /** Whether the visit was still open in the version. */
    boolean close(Visit visit, Closing closing, @Nullable StaffId by) {
        return jdbc.sql(CLOSE)
                        .param("visit", visit.id().value())
                        .param("version", visit.version())
                        .param("outcome", closing.state().name())
                        .param("on", closing.on())
                        .param("reason", closing.reason().map(Enum::name).orElse(null))
                        .param("note", closing.note().orElse(null))
                        .param("by", by == null ? null : by.value())
                        .param("at", closing.recordedAt().atOffset(ZoneOffset.UTC))
                        .update()
                == 1;
    }

    /** Whether the visit was still open in the version; an empty appointment takes the date back. */
    boolean book(Visit visit, Optional<Appointment> appointment) {
        return jdbc.sql(BOOK)
                        .param("visit", visit.id().value())
                        .param("version", visit.version())
                        .param("on", appointment.map(Appointment::on).orElse(null))
                        .param("atTime", appointment.flatMap(Appointment::time).orElse(null))
                        .param("booking", appointment.map(Appointment::booking).orElse(null))
                        .update()
                == 1;
    }

    /** @param mark of the hospital's rules that it was worked out by */
    void setDue(VisitId visit, Due due, String mark) {
        due(jdbc.sql(SET_DUE), due)
                .param("visit", visit.value())
                .param("mark", mark)
                .update();
    }

    /** What is asked for beside the rules; empty when nothing is any more. */
    void ask(VisitId visit, Optional<Visit.Asked> asked) {
        jdbc.sql(ASK)
                .param("visit", visit.value())
                .param("askedBy", asked.map(Visit.Asked::by).orElse(null))
                .param("askedWhy", asked.map(Visit.Asked::why).orElse(null))
                .update();
    }

    Optional<Visit> findOpen(ChildId child) {
        return jdbc.sql(OPEN_ONE)
                .param("child", child.value())
                .query(VisitRows::toVisit)
                .optional();
    }

    /** Those that are over, the last first. */
    List<Visit> past(ChildId child) {
        return jdbc.sql(PAST)
                .param("child", child.value())
                .query(VisitRows::toVisit)
                .list();
    }

    /** The visit of a booking of the hospital's booking system, the open one before any that is over. */
    Optional<Visit> booked(SiteId site, String booking) {
        return jdbc.sql(BOOKED)
                .param("site", site.value())
                .param("booking", booking)
                .query(VisitRows::toVisit)
                .optional();
    }

    private static JdbcClient.StatementSpec due(JdbcClient.StatementSpec statement, Due due) {
        return harm(statement, due.harm())
                .param("lookBy", due.lookBy())
                .param("listBy", due.listBy().orElse((LocalDate) null))
                .param("decideBy", due.decideBy().orElse((LocalDate) null))
                .param("film", due.film())
                .param("rule", due.rule().name())
                .param("side", due.plate().map(plate -> plate.side().name()).orElse(null))
                .param("bone", due.plate().map(plate -> plate.bone().name()).orElse(null))
                .param("boneEnd", due.plate().map(plate -> plate.end().name()).orElse(null))
                .param("risk", VisitRows.riskKind(due.risk()))
                .param("riskNow", VisitRows.riskNow(due.risk()))
                .param("riskInAMonth", VisitRows.riskInAMonth(due.risk()));
    }

    private static JdbcClient.StatementSpec harm(JdbcClient.StatementSpec statement, Harm harm) {
        return statement
                .param("harm", harm.degrees())
                .param("harmReason", harm.kind().name())
                .param(
                        "harmSide",
                        harm.plate().map(plate -> plate.side().name()).orElse(null))
                .param(
                        "harmBone",
                        harm.plate().map(plate -> plate.bone().name()).orElse(null))
                .param(
                        "harmBoneEnd",
                        harm.plate().map(plate -> plate.end().name()).orElse(null))
                .param("harmInto", harm.past().map(past -> past.into().name()).orElse(null))
                .param("harmLow", harm.past().map(Past::lowDegrees).orElse(null))
                .param("harmHigh", harm.past().map(Past::highDegrees).orElse(null));
    }
}
