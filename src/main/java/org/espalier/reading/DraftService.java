package org.espalier.reading;

import java.util.Optional;
import org.espalier.access.CurrentStaff;
import org.espalier.film.Film;
import org.espalier.film.FilmId;
import org.espalier.film.FilmService;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Readings in the making: begun, measured while a hand moves, kept at every change. Each is its reader's alone. */
@Service
@Transactional
public class DraftService {

    private final ReadingDrafts drafts;
    private final JdbcReadingRepository readings;
    private final FilmService films;
    private final ChildrenOnFilms children;
    private final CurrentStaff staff;

    DraftService(
            ReadingDrafts drafts,
            JdbcReadingRepository readings,
            FilmService films,
            ChildrenOnFilms children,
            CurrentStaff staff) {
        this.drafts = drafts;
        this.readings = readings;
        this.films = films;
        this.children = children;
        this.staff = staff;
    }

    /** The caller's unsigned reading of the film. */
    public Optional<ReadingDraft> find(FilmId film) {
        return drafts.find(film);
    }

    /** The caller's unsigned reading of the film, begun now if there is none. */
    public ReadingDraft begin(FilmId film) {
        return drafts.begin(film(film).id());
    }

    /**
     * Begins a reading that is to supersede a signed one, from its landmarks; an unsigned reading of the film that the
     * caller has already is given instead.
     */
    public ReadingDraft correct(ReadingId signed) {
        return drafts.beginFrom(reading(signed), readings.marks(signed));
    }

    /**
     * Begins a second reading of a film that another has read, blind to theirs until it is signed; an unsigned reading
     * of the film that the caller has already is given instead.
     *
     * @throws IllegalArgumentException if the caller has read the film already
     */
    public ReadingDraft readBlind(ReadingId first) {
        var reading = reading(first);
        var film = film(reading.film());
        if (readings.ofFilm(film.site(), film.id()).stream()
                .anyMatch(one -> one.reader().equals(staff.id()))) {
            throw new IllegalArgumentException("A reader cannot be blind to a reading of their own: " + first);
        }
        return drafts.beginSecond(reading);
    }

    /** Answers the film room while a hand moves, and keeps the draft when it lets go. */
    public MeasureOutcome measure(ReadingId id, MeasureRequest request) {
        var marks = request.marks();
        var kept = drafts.byId(id);
        if (kept.isEmpty()) {
            return new MeasureOutcome.Gone();
        }
        if (!request.isCommit()) {
            return new MeasureOutcome.Answered(answer(kept.get(), marks, request.seq()));
        }
        return drafts.saveMarks(kept.get(), request.revision(), marks)
                .<MeasureOutcome>map(now -> new MeasureOutcome.Answered(answer(now, marks, request.seq())))
                .orElseGet(() -> conflict(id));
    }

    /** The numbers of a draft as it is kept, as the film room shows them. */
    public MeasureAnswer answer(ReadingDraft draft) {
        return answer(draft, draft.marks(), 0);
    }

    /**
     * Changes what the reader chose beside the landmarks; the landmarks stay as they are kept. Empty without a draft.
     */
    public Optional<ReadingDraft> choose(ReadingId id, ReadingSettings settings) {
        return drafts.byId(id).flatMap(draft -> drafts.saveSettings(draft, settings));
    }

    /** Forgets a draft for good. */
    public void discard(ReadingId id) {
        drafts.byId(id).ifPresent(drafts::discard);
    }

    private MeasureAnswer answer(ReadingDraft draft, Marks marks, long seq) {
        var film = film(draft.film());
        var child = children.on(film);
        var measurement = FilmMeasurement.of(marks, draft.settings(), film.calibration(), child);
        return MeasureAnswer.of(measurement, draft.settings(), child, seq, draft.revision());
    }

    private MeasureOutcome conflict(ReadingId id) {
        return drafts.byId(id).<MeasureOutcome>map(MeasureOutcome.Conflict::of).orElseGet(MeasureOutcome.Gone::new);
    }

    private Reading reading(ReadingId id) {
        return readings.find(id).orElseThrow(() -> new IllegalArgumentException("No reading " + id));
    }

    private Film film(FilmId id) {
        return films.find(id).orElseThrow(() -> new IllegalArgumentException("No film " + id.value()));
    }
}
