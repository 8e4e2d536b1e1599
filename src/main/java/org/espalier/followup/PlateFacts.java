package org.espalier.followup;

import java.time.LocalDate;
import java.util.Optional;

/**
 * What the rules need to know of one growth plate.
 *
 * @param listed whether an operation there is decided or asked for and not done yet
 * @param since when it came to stand as it does
 * @param lastFilm the last film that was read
 * @param window the last day on which a plate can still reach the target
 * @param notBefore the day before which a plate would come too soon
 * @param screwBroken whether a screw was seen bent, broken or loose
 * @param outlook where the angle is going; empty when there is no forecast
 * @param healing what heals on the limb since it was cut, or is held in cast or frame; empty when nothing does
 */
public record PlateFacts(
        GrowthPlate plate,
        Following following,
        boolean listed,
        LocalDate since,
        Optional<LocalDate> lastFilm,
        Optional<LocalDate> window,
        Optional<LocalDate> notBefore,
        boolean screwBroken,
        Optional<Outlook> outlook,
        Optional<Healing> healing) {

    /**
     * A bone that heals.
     *
     * @param since the day it was cut, or cast or frame was put on
     * @param inFrame whether a frame holds it
     */
    public record Healing(LocalDate since, boolean inFrame) {}

    /** A growth plate that is only watched, of which nothing else is known. */
    public static PlateFacts watched(GrowthPlate plate, LocalDate since) {
        return new PlateFacts(
                plate,
                Following.WATCHED,
                false,
                since,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                false,
                Optional.empty(),
                Optional.empty());
    }

    /** Whether a plate lies there and no film was read since. */
    boolean isUnknownSincePlate() {
        return following.hasPlate()
                && lastFilm.filter(film -> film.isAfter(since)).isEmpty();
    }
}
