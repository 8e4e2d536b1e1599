package org.espalier.reading;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.espalier.access.SiteId;
import org.espalier.access.StaffId;
import org.espalier.film.FilmId;
import org.espalier.patient.ChildId;
import org.espalier.science.quantity.Calibration;
import org.espalier.science.quantity.Length;
import org.espalier.science.quantity.Side;

/**
 * A signed reading. It is never edited; a later one may supersede it, and both stay.
 *
 * @param limbs the limbs read, right before left
 * @param ballPixels the ball's diameter on the film in pixels across, when the ball gave the scale
 * @param numbers as computed when it was signed, those with a value
 */
public record Reading(
        ReadingId id,
        SiteId site,
        ChildId child,
        FilmId film,
        StaffId reader,
        String readerName,
        Instant startedAt,
        Instant signedAt,
        List<Side> limbs,
        Calibration calibration,
        Optional<Double> ballPixels,
        Positioning positioning,
        Optional<Superseding> supersedes,
        Optional<ReadingId> supersededBy,
        List<ReadNumber> numbers) {

    /** Which reading was superseded, and why. */
    public record Superseding(ReadingId reading, String reason) {}

    public Reading {
        limbs = List.copyOf(limbs);
        numbers = List.copyOf(numbers);
    }

    public boolean isSuperseded() {
        return supersededBy.isPresent();
    }

    Reading withNumbers(List<ReadNumber> numbers) {
        return new Reading(
                id,
                site,
                child,
                film,
                reader,
                readerName,
                startedAt,
                signedAt,
                limbs,
                calibration,
                ballPixels,
                positioning,
                supersedes,
                supersededBy,
                numbers);
    }

    /** What its reader had chosen. */
    ReadingSettings settings() {
        var choice =
                switch (calibration.origin()) {
                    case NONE -> CalibrationChoice.NONE;
                    case BALL -> CalibrationChoice.BALL;
                    default -> CalibrationChoice.TAGS;
                };
        var diameter = calibration.ballDiameter().map(Length::millimetres).orElse(null);
        return new ReadingSettings(limbs, choice, diameter, positioning);
    }
}
