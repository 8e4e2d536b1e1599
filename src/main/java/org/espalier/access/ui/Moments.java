package org.espalier.access.ui;

import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import org.espalier.kit.DateText;
import org.espalier.kit.Texts;

/** Moments as text, with the zone they are of. */
final class Moments {

    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm");

    private Moments() {}

    static String at(Instant at, ZoneId zone) {
        var there = at.atZone(zone);
        return Texts.text("access.moment", DateText.of(there.toLocalDate()), CLOCK.format(there), zone.getId());
    }
}
