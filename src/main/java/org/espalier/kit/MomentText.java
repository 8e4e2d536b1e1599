package org.espalier.kit;

import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;

/** Moments as text, with the zone they are of. */
public final class MomentText {

    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm");

    private MomentText() {}

    /** A zone without a place says by how much it is ahead; the names of such zones count the other way round. */
    private static String name(ZonedDateTime there) {
        var zone = there.getZone();
        boolean placeless = zone instanceof ZoneOffset || zone.getId().startsWith("Etc/");
        return placeless ? Texts.text("kit.ahead", there.getOffset().getId().replace("Z", "")) : zone.getId();
    }

    /** Such as {@code 14-Jul-2019 09:05 (Europe/Lisbon)}. */
    public static String of(Instant at, ZoneId zone) {
        var there = at.atZone(zone);
        return Texts.text("kit.moment", DateText.of(there.toLocalDate()), CLOCK.format(there), name(there));
    }
}
