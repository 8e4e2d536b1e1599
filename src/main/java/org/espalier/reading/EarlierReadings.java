package org.espalier.reading;

import java.time.Instant;
import java.util.Optional;
import java.util.UUID;
import org.espalier.access.StaffId;
import org.espalier.film.FilmId;
import org.espalier.film.FilmService;
import org.espalier.platform.Caller;
import org.espalier.platform.Callers;
import org.jspecify.annotations.Nullable;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.security.access.AccessDeniedException;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

/**
 * Readings that were signed before this record began, or in another house. Their numbers are computed here from the
 * landmarks, as those of every reading are; their readers are known by name alone. Only a job of the house brings them
 * in.
 */
@Component
@Transactional
public class EarlierReadings {

    /**
     * A reading that was signed elsewhere.
     *
     * @param reader who signed it, by name, and an id that stands for that name
     */
    public record Signed(
            ReadingId id,
            FilmId film,
            UUID readerId,
            String reader,
            Instant startedAt,
            Instant signedAt,
            ReadingSettings settings,
            Marks marks,
            Optional<ReadingId> secondOf) {

        public Signed {
            if (signedAt.isBefore(startedAt)) {
                throw new IllegalArgumentException("A reading is signed after it was begun, not at " + signedAt);
            }
        }
    }

    private final JdbcReadingRepository readings;
    private final FilmService films;
    private final ChildrenOnFilms children;
    private final ApplicationEventPublisher events;

    EarlierReadings(
            JdbcReadingRepository readings,
            FilmService films,
            ChildrenOnFilms children,
            ApplicationEventPublisher events) {
        this.readings = readings;
        this.films = films;
        this.children = children;
        this.events = events;
    }

    /** Keeps a reading with the numbers that follow from it; sent again with the same id it is kept once. */
    public SignOutcome add(Signed signed) {
        if (Callers.current().filter(Caller.SystemAtSite.class::isInstance).isEmpty()) {
            throw new AccessDeniedException("only a job of the house brings readings in");
        }
        var film = films.find(signed.film())
                .orElseThrow(() ->
                        new IllegalArgumentException("No film " + signed.film().value()));
        var draft = new ReadingDraft(
                signed.id(),
                signed.film(),
                1,
                signed.startedAt(),
                signed.settings(),
                signed.marks(),
                1,
                Optional.empty(),
                signed.secondOf());
        var measured = FilmMeasurement.of(signed.marks(), signed.settings(), film.calibration(), children.on(film));
        @Nullable String noReason = null;
        var signing = new Signing(draft, film, measured, noReason);
        return signing.refusal(1).<SignOutcome>map(refused -> refused).orElseGet(() -> keep(signing, signed));
    }

    private SignOutcome keep(Signing signing, Signed signed) {
        var reader = new StaffId(readings.earlierReader(signed.readerId(), signed.reader()));
        var reading = signing.reading(reader, signed.reader(), signed.signedAt());
        if (readings.add(reading, signed.marks())) {
            events.publishEvent(new ReadingSigned(
                    reading.site().value(),
                    reading.child().value(),
                    reading.film().value(),
                    reading.id()));
        }
        return new SignOutcome.Signed(reading.id());
    }
}
