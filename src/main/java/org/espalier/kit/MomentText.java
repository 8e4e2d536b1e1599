package org.espalier.kit;

import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;

/** Moments as text, with the zone they are of. */
public final class MomentText {

    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm");

    private MomentText() {}

    /** Such as {@code 14-Jul-2019 09:05 (Europe/Lisbon)}. */
    public static String of(Instant at, ZoneId zone) {
        var there = at.atZone(zone);
        return Texts.text("kit.moment", DateText.of(there.toLocalDate()), CLOCK.format(there), zone.getId());
    }
}
