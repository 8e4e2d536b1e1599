package org.espalier.reading.ui;

import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.espalier.access.CurrentStaff;
import org.espalier.access.Role;
import org.espalier.access.SignAgain;
import org.espalier.film.Film;
import org.espalier.film.FilmId;
import org.espalier.film.FilmService;
import org.espalier.film.FilmState;
import org.espalier.patient.PatientService;
import org.espalier.reading.DraftService;
import org.espalier.reading.Marks;
import org.espalier.reading.MeasureAnswer;
import org.espalier.reading.Reading;
import org.espalier.reading.ReadingDraft;
import org.espalier.reading.ReadingId;
import org.espalier.reading.ReadingService;
import org.espalier.reading.ReadingSettings;
import org.espalier.reading.SignOutcome;
import org.jspecify.annotations.Nullable;
import org.springframework.context.annotation.Scope;
import org.springframework.stereotype.Component;

/**
 * What the film room knows and does, without a screen. Everything is rebuilt from the film's address and the draft, so
 * that a reload or another node goes on where this one stopped.
 */
@Component
@Scope("prototype")
class ReadingPresenter {

    private final FilmService films;
    private final PatientService patients;
    private final DraftService drafts;
    private final ReadingService readings;
    private final CurrentStaff staff;
    private final SignAgain signAgain;

    ReadingPresenter(
            FilmService films,
            PatientService patients,
            DraftService drafts,
            ReadingService readings,
            CurrentStaff staff,
            SignAgain signAgain) {
        this.films = films;
        this.patients = patients;
        this.drafts = drafts;
        this.readings = readings;
        this.staff = staff;
        this.signAgain = signAgain;
    }

    /**
     * Opens the film room. Shows the signed reading asked for; else the caller's own draft; else the latest signed
     * reading that stands; else a new draft, for those who may read.
     *
     * @param asked a signed reading to look at
     * @return empty when there is no film that the caller may see
     */
    Optional<FilmRoomState> open(FilmId id, Optional<ReadingId> asked) {
        return films.find(id).map(film -> {
            var child = film.child().flatMap(owner -> patients.open(owner, "film"));
            var signed = readings.ofFilm(id);
            var mayRead = film.state() == FilmState.READY && staff.has(Role.SURGEON, film.site());
            var shown = asked.flatMap(wanted -> find(signed, wanted));
            var draft = shown.isEmpty() && mayRead ? drafts.find(id) : Optional.<ReadingDraft>empty();
            if (shown.isEmpty() && draft.isEmpty()) {
                shown = signed.stream().filter(Reading::counts).findFirst();
            }
            if (shown.isEmpty() && draft.isEmpty() && mayRead) {
                draft = Optional.of(drafts.begin(id));
            }
            return new FilmRoomState(film, child, mayRead, draft, shown, signed, sameDay(film));
        });
    }

    /** Begins a second reading, blind to the first; nothing happens for a reader who has read the film already. */
    void readBlind(FilmId film, ReadingId first) {
        boolean mine =
                readings.ofFilm(film).stream().anyMatch(one -> one.reader().equals(staff.id()));
        if (!mine) {
            drafts.readBlind(first);
        }
    }

    private List<Film> sameDay(Film film) {
        return film.takenOn().isEmpty()
                ? List.of()
                : film.child().map(films::of).orElse(List.of()).stream()
                        .filter(other -> other.takenOn().equals(film.takenOn())
                                && !other.id().equals(film.id()))
                        .toList();
    }

    /** The numbers and lines of a draft. */
    MeasureAnswer answer(ReadingDraft draft) {
        return drafts.answer(draft);
    }

    /** The numbers and lines of a signed reading. */
    MeasureAnswer answer(Reading signed) {
        return readings.answer(signed);
    }

    Marks marks(Reading signed) {
        return readings.marks(signed.id());
    }

    /** Begins a reading that is to supersede a signed one; gives the caller's draft of that film when there is one. */
    ReadingDraft correct(ReadingId signed) {
        return drafts.correct(signed);
    }

    /**
     * Changes what was chosen beside the landmarks, on the draft as it is now; empty when there is no draft any more.
     */
    Optional<ReadingDraft> choose(FilmId film, UnaryOperator<ReadingSettings> change) {
        return drafts.find(film).flatMap(draft -> drafts.choose(draft.id(), change.apply(draft.settings())));
    }

    /** The draft as it would be signed now; empty when there is none any more. */
    Optional<SignSummary> summary(FilmId film) {
        return drafts.find(film).map(draft -> SignSummary.of(draft, drafts.answer(draft), isOfMoved(draft)));
    }

    /** Whether the draft supersedes a reading of another child: the film was moved. */
    private boolean isOfMoved(ReadingDraft draft) {
        var owner = films.find(draft.film()).flatMap(Film::child);
        return readings.ofFilm(draft.film()).stream()
                .filter(before -> draft.supersedes().filter(before.id()::equals).isPresent())
                .anyMatch(before ->
                        owner.filter(child -> !child.equals(before.child())).isPresent());
    }

    /** Whether the reader must prove again who they are before signing. */
    boolean mustProve() {
        return signAgain.isNeeded();
    }

    SignAgain.Answer prove(String password) {
        return signAgain.confirm(password);
    }

    SignOutcome sign(SignSummary seen, @Nullable String reason) {
        return readings.sign(seen.draft().id(), seen.draft().revision(), reason);
    }

    void discard(ReadingId draft) {
        drafts.discard(draft);
    }

    private static Optional<Reading> find(List<Reading> signed, ReadingId wanted) {
        return signed.stream().filter(one -> one.id().equals(wanted)).findFirst();
    }
}
