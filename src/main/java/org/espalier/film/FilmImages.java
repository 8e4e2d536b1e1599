package org.espalier.film;

import java.util.Optional;
import org.espalier.access.AccessLog;
import org.espalier.access.ChildRef;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Opens films to be looked at; every look at a child's film is written down. */
@Service
public class FilmImages {

    private final FilmRepository films;
    private final Pyramids pyramids;
    private final AccessLog log;

    FilmImages(FilmRepository films, Pyramids pyramids, AccessLog log) {
        this.films = films;
        this.pyramids = pyramids;
        this.log = log;
    }

    /** Opens a film; empty when there is none that the caller may see. */
    @Transactional
    public Optional<OpenFilm> open(FilmId id) {
        var film = films.find(id);
        film.ifPresent(this::look);
        return film.map(one -> new OpenFilm(one, pyramids));
    }

    /** A film in the tray is nobody's record yet. */
    private void look(Film film) {
        film.child()
                .ifPresent(child -> log.film(
                        new ChildRef(film.site(), child.value()), film.id().value()));
    }
}
