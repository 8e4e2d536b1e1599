package org.espalier.followup;

import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import net.fortuna.ical4j.model.Calendar;
import net.fortuna.ical4j.model.component.VAlarm;
import net.fortuna.ical4j.model.component.VEvent;
import net.fortuna.ical4j.model.property.Description;
import net.fortuna.ical4j.model.property.DtStamp;
import net.fortuna.ical4j.model.property.Location;
import net.fortuna.ical4j.model.property.Sequence;
import net.fortuna.ical4j.model.property.Uid;
import net.fortuna.ical4j.model.property.immutable.ImmutableAction;

/** A date as a calendar file; it names no child, for telephones show it to whoever holds them. */
final class CalendarFile {

    private static final Duration USUAL_LENGTH = Duration.ofHours(1);
    private static final Duration REMINDER = Duration.ofDays(-2);

    /** Between these a telephone number stands as one piece from left to right, whatever the language around it. */
    private static final String LEFT_TO_RIGHT = "\u2066";

    private static final String END = "\u2069";

    private CalendarFile() {}

    static byte[] of(Visit visit, Appointment appointment, Letter letter, ZoneId zone, Instant written) {
        var text = new LetterText(letter.language());
        var event = event(appointment, text.text("calendar"), zone);
        event.replace(new DtStamp(written));
        event.add(new Uid(visit.id().value() + "@espalier"));
        event.add(new Sequence((int) visit.version()));
        event.add(new Location(letter.hospital() + ", " + letter.letterhead().address()));
        event.add(new Description(
                text.text("call.text", LEFT_TO_RIGHT + letter.letterhead().phone() + END)));
        event.add(alarm(text));
        return new Calendar()
                .withProdId("-//Espalier//visits//EN")
                .withDefaults()
                .withComponent(event)
                .getFluentTarget()
                .toString()
                .getBytes(StandardCharsets.UTF_8);
    }

    private static VEvent event(Appointment appointment, String summary, ZoneId zone) {
        LocalDate day = appointment.on();
        return appointment
                .time()
                .map(time -> new VEvent(day.atTime(time).atZone(zone).toInstant(), USUAL_LENGTH, summary))
                .orElseGet(() -> new VEvent(day, summary));
    }

    private static VAlarm alarm(LetterText text) {
        var alarm = new VAlarm(REMINDER);
        alarm.add(ImmutableAction.DISPLAY);
        alarm.add(new Description(text.text("calendar")));
        return alarm;
    }
}
