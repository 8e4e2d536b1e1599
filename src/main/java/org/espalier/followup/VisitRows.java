package org.espalier.followup;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.OffsetDateTime;
import java.util.Optional;
import java.util.UUID;
import org.espalier.access.SiteId;
import org.espalier.patient.Bone;
import org.espalier.patient.BoneEnd;
import org.espalier.patient.ChildId;
import org.espalier.prognosis.Past;
import org.espalier.science.forecast.Deformity;
import org.espalier.science.quantity.Side;
import org.jspecify.annotations.Nullable;

/** Visits as the database keeps them. */
final class VisitRows {

    static final String COLUMNS = """
            v.id, v.child_id, v.site_id, v.version, v.opened_for, v.opened_at, v.asked_by, v.asked_why, v.look_by,
            v.list_by, v.decide_by, v.film, v.rule, v.rule_side, v.rule_bone, v.rule_bone_end, v.risk, v.risk_now,
            v.risk_in_a_month, v.harm, v.harm_reason, v.harm_side, v.harm_bone, v.harm_bone_end, v.harm_into,
            v.harm_low, v.harm_high, v.appointment_on, v.appointment_at, v.booking, v.closed_at,
            v.outcome, v.outcome_on, v.outcome_reason, v.outcome_note
            """;

    private static final String PAST_TARGET = "PAST_TARGET";
    private static final String WINDOW_CLOSES = "WINDOW_CLOSES";
    private static final String NOT_KNOWN = "NOT_KNOWN";

    private VisitRows() {}

    static Visit toVisit(ResultSet row, int number) throws SQLException {
        return new Visit(
                new VisitId(row.getObject("id", UUID.class)),
                new ChildId(row.getObject("child_id", UUID.class)),
                new SiteId(row.getObject("site_id", UUID.class)),
                row.getLong("version"),
                OpenedFor.valueOf(row.getString("opened_for")),
                instant(row, "opened_at"),
                toAsked(row),
                toDue(row),
                toAppointment(row),
                toClosing(row));
    }

    static VisitStep toStep(ResultSet row, int number) throws SQLException {
        return new VisitStep(
                row.getObject("id", UUID.class),
                new ChildId(row.getObject("child_id", UUID.class)),
                new VisitId(row.getObject("visit_id", UUID.class)),
                VisitStep.Kind.valueOf(row.getString("kind")),
                row.getObject("on_day", LocalDate.class),
                row.getObject("at_time", LocalTime.class),
                text(row, "reason").map(VisitReason::valueOf),
                text(row, "note"),
                VisitStep.Source.valueOf(row.getString("source")),
                instant(row, "recorded_at"));
    }

    static String riskKind(Risk risk) {
        return switch (risk) {
            case Risk.PastTarget past -> PAST_TARGET;
            case Risk.WindowCloses closes -> WINDOW_CLOSES;
            case Risk.NotKnown unknown -> NOT_KNOWN;
        };
    }

    static @Nullable Double riskNow(Risk risk) {
        return risk instanceof Risk.PastTarget(double inTime, double monthLater) ? inTime : null;
    }

    static @Nullable Double riskInAMonth(Risk risk) {
        return risk instanceof Risk.PastTarget(double inTime, double monthLater) ? monthLater : null;
    }

    private static Optional<Visit.Asked> toAsked(ResultSet row) throws SQLException {
        var by = row.getObject("asked_by", LocalDate.class);
        return by == null ? Optional.empty() : Optional.of(new Visit.Asked(by, row.getString("asked_why")));
    }

    private static Due toDue(ResultSet row) throws SQLException {
        return new Due(
                row.getObject("look_by", LocalDate.class),
                day(row, "list_by"),
                day(row, "decide_by"),
                row.getBoolean("film"),
                DueRule.valueOf(row.getString("rule")),
                toPlate(row, "rule"),
                toRisk(row),
                toHarm(row));
    }

    private static Harm toHarm(ResultSet row) throws SQLException {
        double degrees = row.getDouble("harm");
        var into = text(row, "harm_into").map(Deformity::valueOf);
        double low = row.getDouble("harm_low");
        double high = row.getDouble("harm_high");
        return new Harm(
                Harm.Kind.valueOf(row.getString("harm_reason")),
                degrees,
                toPlate(row, "harm"),
                into.map(deformity -> new Past(deformity, degrees, low, high)));
    }

    private static Optional<GrowthPlate> toPlate(ResultSet row, String of) throws SQLException {
        var side = row.getString(of + "_side");
        return side == null
                ? Optional.empty()
                : Optional.of(new GrowthPlate(
                        Side.valueOf(side),
                        Bone.valueOf(row.getString(of + "_bone")),
                        BoneEnd.valueOf(row.getString(of + "_bone_end"))));
    }

    private static Risk toRisk(ResultSet row) throws SQLException {
        return switch (row.getString("risk")) {
            case PAST_TARGET -> new Risk.PastTarget(row.getDouble("risk_now"), row.getDouble("risk_in_a_month"));
            case WINDOW_CLOSES -> new Risk.WindowCloses();
            default -> new Risk.NotKnown();
        };
    }

    private static Optional<Appointment> toAppointment(ResultSet row) throws SQLException {
        var on = row.getObject("appointment_on", LocalDate.class);
        return on == null
                ? Optional.empty()
                : Optional.of(new Appointment(
                        on, row.getObject("appointment_at", LocalTime.class), row.getString("booking")));
    }

    private static Optional<Closing> toClosing(ResultSet row) throws SQLException {
        var outcome = row.getString("outcome");
        if (outcome == null) {
            return Optional.empty();
        }
        var state = VisitState.valueOf(outcome);
        var reason = text(row, "outcome_reason").map(VisitReason::valueOf);
        return Optional.of(new Closing(
                state,
                row.getObject("outcome_on", LocalDate.class),
                reason,
                text(row, "outcome_note"),
                instant(row, "closed_at")));
    }

    static Optional<LocalDate> day(ResultSet row, String column) throws SQLException {
        return Optional.ofNullable(row.getObject(column, LocalDate.class));
    }

    static Instant instant(ResultSet row, String column) throws SQLException {
        return row.getObject(column, OffsetDateTime.class).toInstant();
    }

    private static Optional<String> text(ResultSet row, String column) throws SQLException {
        return Optional.ofNullable(row.getString(column));
    }
}
