package org.espalier.followup;

import java.time.LocalDate;
import org.espalier.kit.DateText;
import org.espalier.kit.Texts;
import org.espalier.prognosis.Past;
import org.espalier.science.quantity.Age;

/** Why and by when to look, in sentences. */
public final class DueText {

    private static final double PERCENT = 100;

    private DueText() {}

    /** One sentence: which rule decided, and what a month's wait would risk. */
    public static String why(Due due) {
        var where = due.plate().map(DueText::plate).orElse("");
        var rule = Texts.text("followup.rule." + due.rule().name(), where);
        return (where.isEmpty() ? rule : Texts.text("followup.rule-at", where, rule)) + " " + risk(due.risk());
    }

    /** How bad it is to wait longer: where, how far, into what, within what bounds. */
    public static String harm(Harm harm) {
        var where = harm.plate().map(DueText::plate).orElse("");
        var what = harm.past()
                .map(past -> past(harm.degrees(), past))
                .orElseGet(() -> Texts.text("followup.harm." + harm.kind().name(), Math.round(harm.degrees())));
        return where.isEmpty() ? what : Texts.text("followup.harm-at", where, what);
    }

    private static String past(double degrees, Past past) {
        var key = Math.round(degrees) == 0 ? "followup.harm.at-target." : "followup.harm.past-target.";
        return Texts.text(
                key + past.into().name(),
                Math.round(degrees),
                Math.round(past.lowDegrees()),
                Math.round(past.highDegrees()));
    }

    /** The growth plate by its place: {@code right distal femur}. */
    public static String plate(GrowthPlate plate) {
        var bone = Texts.text(
                "followup.plate." + plate.end().name() + "_" + plate.bone().name());
        return Texts.text("followup.plate", Texts.of(plate.side()), bone);
    }

    /** How far off a day is, in words: {@code in 3m}, {@code 12d ago}, {@code today}. */
    public static String away(LocalDate day, LocalDate today) {
        if (day.equals(today)) {
            return Texts.text("followup.today");
        }
        return day.isBefore(today)
                ? Texts.text("followup.ago", DateText.of(Age.between(day, today)))
                : Texts.text("followup.in", DateText.of(Age.between(today, day)));
    }

    /** A date that was given, with its time where one is known, and how far off it is. */
    public static String date(Appointment appointment, LocalDate today) {
        var day = DateText.inWords(appointment.on());
        var far = away(appointment.on(), today);
        return appointment
                .time()
                .map(time -> Texts.text("followup.date-at", day, time.toString(), far))
                .orElseGet(() -> Texts.text("followup.date", day, far));
    }

    private static String risk(Risk risk) {
        return switch (risk) {
            case Risk.PastTarget(double inTime, double monthLater) ->
                Texts.text("followup.risk.past-target", percent(inTime), percent(monthLater));
            case Risk.WindowCloses() -> Texts.text("followup.risk.window");
            case Risk.NotKnown() -> Texts.text("followup.risk.not-known");
        };
    }

    private static String percent(double chance) {
        long rounded = Math.round(chance * PERCENT);
        return rounded == 0 && chance > 0 ? Texts.text("followup.under-one") : Long.toString(rounded);
    }
}
