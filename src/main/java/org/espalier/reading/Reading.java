package org.espalier.reading;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.espalier.access.SiteId;
import org.espalier.access.StaffId;
import org.espalier.film.FilmId;
import org.espalier.patient.ChildId;
import org.espalier.science.alignment.Landmark;
import org.espalier.science.quantity.Calibration;
import org.espalier.science.quantity.Side;

/**
 * A signed reading. It is never edited; a later one may supersede it, and both stay.
 *
 * @param limbs the limbs read, right before left
 * @param ballPixels the ball's diameter on the film in pixels across, when the ball gave the scale
 * @param screws what was seen of each screw, for every plate its reader saw
 * @param secondOf the reading by another that this one was read again for, blind to it
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
        FilmTaken taken,
        List<ScrewSeen> screws,
        Optional<ReadingId> secondOf,
        Optional<Superseding> supersedes,
        Optional<ReadingId> supersededBy,
        List<ReadNumber> numbers) {

    /** Which reading was superseded, and why. */
    public record Superseding(ReadingId reading, String reason) {}

    public Reading {
        limbs = List.copyOf(limbs);
        screws = List.copyOf(screws);
        numbers = List.copyOf(numbers);
    }

    public boolean isSuperseded() {
        return supersededBy.isPresent();
    }

    /**
     * Whether it is what counts of its film: not superseded, and no second reading made to learn how far readers
     * differ.
     */
    public boolean counts() {
        return supersededBy.isEmpty() && secondOf.isEmpty();
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
                taken,
                screws,
                secondOf,
                supersedes,
                supersededBy,
                numbers);
    }

    /** What its reader had chosen. */
    public ReadingSettings settings() {
        var choice =
                switch (calibration.origin()) {
                    case NONE -> CalibrationChoice.NONE;
                    case BALL -> CalibrationChoice.BALL;
                    default -> CalibrationChoice.TAGS;
                };
        return new ReadingSettings(limbs, choice, taken, further(), screws);
    }

    /** The further landmarks that were set, told by the numbers read from them. */
    private Set<Landmark.Family> further() {
        return numbers.stream()
                .map(number -> number.quantity().family())
                .filter(family -> family == Landmark.Family.FURTHER || family == Landmark.Family.IMPLANT)
                .collect(Collectors.toSet());
    }
}
