package org.espalier.access;

import java.time.DateTimeException;
import java.time.ZoneId;
import java.util.regex.Pattern;

/**
 * What the operator says of a hospital.
 *
 * @param code 2 to 12 capital letters and digits, short enough for a shelf label
 * @param zone name of its time zone, {@code Europe/Lisbon}
 */
public record SiteData(String code, String name, String zone) {

    private static final Pattern CODE = Pattern.compile("[A-Z0-9]{2,12}");

    public SiteData {
        if (!isCode(code) || name.isBlank() || !isZone(zone)) {
            throw new IllegalArgumentException("not a site: " + code + ", " + name + ", " + zone);
        }
    }

    public static boolean isCode(String code) {
        return CODE.matcher(code).matches();
    }

    public static boolean isZone(String zone) {
        try {
            return zone.contains("/") && !ZoneId.of(zone).getId().isEmpty();
        } catch (DateTimeException e) {
            return false;
        }
    }
}
