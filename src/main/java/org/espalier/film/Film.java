package org.espalier.film;

import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;
import org.espalier.access.SiteId;
import org.espalier.patient.ChildId;
import org.espalier.platform.BlobRef;
import org.espalier.science.quantity.Calibration;

/**
 * A film as it was received.
 *
 * @param site the hospital that has it now
 * @param child whose it is; empty while it lies in the tray
 * @param version counts the changes of whose it is
 * @param takenOn the day of the exposure; empty when neither the film nor a person said so
 * @param view how it was taken, in the words of the film
 * @param size empty until the picture was prepared
 * @param scale what the film's own tags say about millimetres
 * @param aside why it cannot be shown; present exactly when it is kept aside
 */
public record Film(
        FilmId id,
        SiteId site,
        Optional<ChildId> child,
        long version,
        FilmState state,
        FilmKind kind,
        Optional<LocalDate> takenOn,
        Optional<String> view,
        Optional<Size> size,
        FilmScale scale,
        Optional<AsideReason> aside,
        BlobRef bytes,
        Instant receivedAt) {

    /** The calibration the film brings along. */
    public Calibration calibration() {
        return scale.toCalibration();
    }

    /** Pixels across and down, upright. */
    public record Size(int width, int height) {}
}
