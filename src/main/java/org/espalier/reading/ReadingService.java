package org.espalier.reading;

import java.time.Clock;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import org.espalier.access.CurrentStaff;
import org.espalier.access.SignAgain;
import org.espalier.access.SiteId;
import org.espalier.film.Film;
import org.espalier.film.FilmId;
import org.espalier.film.FilmService;
import org.espalier.patient.ChildId;
import org.jspecify.annotations.Nullable;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Signs readings and gives the signed ones back. */
@Service
@Transactional
public class ReadingService {

    private static final int SHORTEST_REASON = 3;

    private final JdbcReadingRepository readings;
    private final ReadingDrafts drafts;
    private final FilmService films;
    private final ChildrenOnFilms children;
    private final CurrentStaff staff;
    private final SignAgain signAgain;
    private final ApplicationEventPublisher events;
    private final Clock clock;

    ReadingService(
            JdbcReadingRepository readings,
            ReadingDrafts drafts,
            FilmService films,
            ChildrenOnFilms children,
            CurrentStaff staff,
            SignAgain signAgain,
            ApplicationEventPublisher events,
            Clock clock) {
        this.readings = readings;
        this.drafts = drafts;
        this.films = films;
        this.children = children;
        this.staff = staff;
        this.signAgain = signAgain;
        this.events = events;
        this.clock = clock;
    }

    /**
     * Signs a draft: reading, numbers and event in one transaction, and the draft is gone. Signing the same draft again
     * changes nothing and names the same reading.
     *
     * @param revision the draft's revision that the reader saw
     * @param reason why the signed reading is superseded, when one is
     */
    public SignOutcome sign(ReadingId draft, long revision, @Nullable String reason) {
        if (isSigned(draft)) {
            return new SignOutcome.Signed(draft);
        }

        var kept = drafts.byId(draft);
        if (kept.isEmpty()) {
            return isSigned(draft)
                    ? new SignOutcome.Signed(draft)
                    : new SignOutcome.Refused(SignOutcome.Reason.NO_DRAFT);
        }
        var signing = signing(kept.get(), reason);
        return signing.refusal(revision)
                .or(() -> supersededMeanwhile(kept.get()))
                .<SignOutcome>map(refused -> refused)
                .orElseGet(() -> keep(signing));
    }

    /**
     * Every reading of a film, the newest first, superseded ones too; none while the caller reads it blind.
     */
    public List<Reading> ofFilm(FilmId film) {
        return seen(readings.ofFilm(film(film).site(), film));
    }

    /**
     * Every reading of a child, the newest first, superseded ones too; without films the caller reads blind.
     */
    public List<Reading> ofChild(SiteId site, ChildId child) {
        return seen(readings.ofChild(site, child));
    }

    /** Where the landmarks of a signed reading were set. */
    public Marks marks(ReadingId signed) {
        return readings.marks(signed);
    }

    /** A signed reading as the film room shows it: its lines and circles, and the numbers as they were signed. */
    public MeasureAnswer answer(Reading signed) {
        var film = film(signed.film());
        var child = children.on(film);
        var drawn = FilmMeasurement.of(readings.marks(signed.id()), signed.settings(), film.calibration(), child);
        return MeasureAnswer.of(drawn.withNumbers(signed.numbers()), signed.settings(), child, 0, 0);
    }

    private Signing signing(ReadingDraft draft, @Nullable String reason) {
        var film = film(draft.film());
        var measurement = FilmMeasurement.of(draft.marks(), draft.settings(), film.calibration(), children.on(film));
        return new Signing(draft, film, measurement, tidy(reason));
    }

    /** What a reader who reads a film blind may see; a job of the house reads nothing, so nothing is kept from it. */
    private List<Reading> seen(List<Reading> all) {
        if (staff.find().isEmpty()) {
            return all;
        }
        var blind = drafts.blind();
        return all.stream().filter(reading -> !blind.contains(reading.film())).toList();
    }

    private boolean isSigned(ReadingId id) {
        return readings.find(id)
                .filter(signed -> signed.reader().equals(staff.id()))
                .isPresent();
    }

    private Optional<SignOutcome.Refused> supersededMeanwhile(ReadingDraft draft) {
        return draft.supersedes()
                .flatMap(readings::find)
                .filter(Reading::isSuperseded)
                .map(before -> new SignOutcome.Refused(SignOutcome.Reason.SUPERSEDED_MEANWHILE));
    }

    private SignOutcome keep(Signing signing) {
        var reading = signing.reading(staff.id(), staff.name(), clock.instant().truncatedTo(ChronoUnit.MICROS));
        signAgain.prove();
        if (!readings.add(reading, signing.draft().marks())) {
            return isSigned(reading.id())
                    ? new SignOutcome.Signed(reading.id())
                    : new SignOutcome.Refused(SignOutcome.Reason.SUPERSEDED_MEANWHILE);
        }
        drafts.discard(signing.draft());
        events.publishEvent(new ReadingSigned(
                reading.site().value(), reading.child().value(), reading.film().value(), reading.id()));
        return new SignOutcome.Signed(reading.id());
    }

    private Film film(FilmId id) {
        return films.find(id).orElseThrow(() -> new IllegalArgumentException("No film " + id.value()));
    }

    private static @Nullable String tidy(@Nullable String reason) {
        var tidy = reason == null ? "" : reason.strip();
        return tidy.length() < SHORTEST_REASON ? null : tidy;
    }
}
