package org.espalier.film;

import java.io.InputStream;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.espalier.access.CurrentStaff;
import org.espalier.access.Role;
import org.espalier.access.SiteId;
import org.espalier.patient.ChildId;
import org.jspecify.annotations.Nullable;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.security.access.AccessDeniedException;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Films: taken in, found, and given to children. */
@Service
public class FilmService {

    private static final List<Role> SENDERS = List.of(Role.RADIOGRAPHER, Role.SURGEON, Role.NURSE, Role.ARCHIVE);

    private final FilmDoor door;
    private final FilmRepository films;
    private final FilmTrayRepository tray;
    private final FilmAssignmentRepository assignments;
    private final CurrentStaff currentStaff;
    private final ApplicationEventPublisher events;

    FilmService(
            FilmDoor door,
            FilmRepository films,
            FilmTrayRepository tray,
            FilmAssignmentRepository assignments,
            CurrentStaff currentStaff,
            ApplicationEventPublisher events) {
        this.door = door;
        this.films = films;
        this.tray = tray;
        this.assignments = assignments;
        this.currentStaff = currentStaff;
        this.events = events;
    }

    /**
     * Takes in a file. May be repeated without harm: the same bytes are one film. A job of the house speaks for its
     * hospital.
     *
     * @param originalName what the sender calls it; kept as text, never used as a path
     */
    public Received receive(SiteId site, InputStream bytes, String originalName) {
        boolean person = currentStaff.find().isPresent();
        if (person && SENDERS.stream().noneMatch(role -> currentStaff.has(role, site))) {
            throw new AccessDeniedException("films are sent by those who work at the site");
        }
        return door.receive(site, bytes, originalName);
    }

    /** The film; empty when there is none that the caller may see. */
    @Transactional
    public Optional<Film> find(FilmId film) {
        return films.find(film);
    }

    /** The films of a child that are or will be shown, by the day they were taken; those without a day come last. */
    @Transactional
    public List<Film> of(ChildId child) {
        return films.of(child);
    }

    /** The films of a site that belong to no child yet, and those kept aside, the latest first. */
    @Transactional
    public List<TrayItem> tray(SiteId site) {
        return tray.of(site);
    }

    /** Everything that was said about whose film it is, the latest last. */
    @Transactional
    public List<FilmAssignment> assignments(FilmId film) {
        return assignments.of(film);
    }

    /**
     * Gives a film to a child, or moves it from another; what was said before stays visible.
     *
     * @param version of the film as the caller saw it
     * @param takenOn the day of the exposure, needed where the film does not say; null lets the film's own stand
     * @param reason why the film is moved; needed only when it was given to a child before
     * @return the film, or empty when somebody else changed it meanwhile
     */
    @Transactional
    public Optional<Film> assign(
            FilmId film, long version, ChildId child, @Nullable LocalDate takenOn, @Nullable String reason) {
        return change(film, version, child, takenOn, reason);
    }

    /**
     * Lays a film back in the tray.
     *
     * @return the film, or empty when somebody else changed it meanwhile
     */
    @Transactional
    public Optional<Film> layBack(FilmId film, long version, String reason) {
        return change(film, version, null, null, reason);
    }

    private Optional<Film> change(
            FilmId id, long version, @Nullable ChildId child, @Nullable LocalDate takenOn, @Nullable String reason) {
        var film = films.lock(id).orElseThrow(() -> new IllegalArgumentException("no such film: " + id));
        if (film.version() != version) {
            return Optional.empty();
        }
        assignments.addNext(film, child, takenOn, reason);
        events.publishEvent(new FilmAssigned(id, film.site(), film.child(), Optional.ofNullable(child)));
        return films.find(id);
    }
}
