package org.espalier.opinion;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.espalier.film.ClipCopies;
import org.espalier.film.ClipCopy;
import org.espalier.film.FilmCopies;
import org.espalier.film.FilmCopy;
import org.espalier.kit.Texts;
import org.springframework.stereotype.Component;

/**
 * Copies of photos and clips, made before anything of a thread is written down: a clip may turn out not to be copied.
 */
@Component
class PicturesShown {

    private final FilmCopies films;
    private final ClipCopies clips;
    private final JdbcShownRepository shown;

    PicturesShown(FilmCopies films, ClipCopies clips, JdbcShownRepository shown) {
        this.films = films;
        this.clips = clips;
        this.shown = shown;
    }

    /** A picture with its copy; one of the two is there. */
    record Copied(ShowablePicture picture, Optional<FilmCopy> photo, Optional<ClipCopy> clip) {}

    /**
     * Copies what is wanted; empty when the file of a clip is not understood.
     *
     * @throws IllegalArgumentException when a picture is not among those that can be shown
     */
    Optional<List<Copied>> copy(Showable from, List<PictureToShow> wanted) {
        var copies = new ArrayList<Copied>();
        for (var one : wanted) {
            var copied = copy(picture(from, one), one);
            if (copied.photo().isEmpty() && copied.clip().isEmpty()) {
                return Optional.empty();
            }
            copies.add(copied);
        }
        return Optional.of(copies);
    }

    void show(ThreadId thread, List<Copied> copies, Instant at) {
        int photos = (int) shown.films(thread).stream().filter(ShownFilm::photo).count();
        int moving = shown.clips(thread).size();
        for (var one : copies) {
            if (one.photo().isPresent()) {
                var title = Texts.text("opinion.photo", ++photos);
                shown.addPhoto(thread, one.picture(), title, one.photo().get(), at);
            } else {
                var title = Texts.text("opinion.clip", ++moving);
                shown.addClip(thread, one.picture(), title, one.clip().orElseThrow(), at);
            }
        }
    }

    private static ShowablePicture picture(Showable from, PictureToShow wanted) {
        return from.pictures().stream()
                .filter(one -> one.picture().id().equals(wanted.picture()))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no such picture: " + wanted.picture()));
    }

    private Copied copy(ShowablePicture picture, PictureToShow wanted) {
        return picture.picture().kind().isClip()
                ? new Copied(picture, Optional.empty(), clips.copy(picture.picture()))
                : new Copied(picture, Optional.of(films.copy(picture.picture(), wanted.covers())), Optional.empty());
    }
}
