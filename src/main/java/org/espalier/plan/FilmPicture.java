package org.espalier.plan;

import java.util.Base64;
import java.util.Locale;
import java.util.Optional;
import org.espalier.film.FilmId;
import org.espalier.film.FilmImages;
import org.espalier.film.FilmView;
import org.espalier.film.NoPictureException;
import org.espalier.film.OpenFilm;

/**
 * A part of a film as a picture for paper; reading it is a look at the film, and written down as one.
 *
 * @param x left edge in pixels of the film
 * @param y upper edge
 * @param address the picture itself
 */
record FilmPicture(double x, double y, double width, double height, String address) {

    private static final int PIXELS = 1100;
    private static final int QUALITY = 80;
    private static final double LEAST = 8;

    /** What of the film lies in a box; empty where next to nothing of it does, or there is no picture. */
    static Optional<FilmPicture> of(FilmImages images, FilmId film, FilmBox box) {
        return images.open(film).filter(OpenFilm::hasPicture).flatMap(open -> of(open, box));
    }

    private static Optional<FilmPicture> of(OpenFilm film, FilmBox box) {
        try {
            var info = film.info();
            double x = Math.max(0, box.x());
            double y = Math.max(0, box.y());
            double width = Math.min(info.width(), box.x() + box.width()) - x;
            double height = Math.min(info.height(), box.y() + box.height()) - y;
            if (Math.min(width, height) < LEAST) {
                return Optional.empty();
            }
            var viewport = String.format(Locale.ROOT, "%d,%d,%.3f,%.3f,%.3f,%.3f", PIXELS, PIXELS, x, y, width, height);
            var jpeg = film.jpeg(FilmView.of(viewport, null, QUALITY));
            var address = "data:image/jpeg;base64," + Base64.getEncoder().encodeToString(jpeg);
            return Optional.of(new FilmPicture(x, y, width, height, address));
        } catch (NoPictureException none) {
            return Optional.empty();
        }
    }
}
