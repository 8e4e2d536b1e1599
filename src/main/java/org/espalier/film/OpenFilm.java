package org.espalier.film;

import java.io.IOException;
import java.io.UncheckedIOException;
import org.espalier.film.Pyramids.Failed;
import org.espalier.film.Pyramids.Prepared;
import org.espalier.film.tiles.Drawing;
import org.espalier.kit.Texts;

/** A film that its holder may look at. Its picture is read when it is asked for. */
public final class OpenFilm {

    /** A change in how films are drawn changes this, so that nothing drawn before is taken for the same. */
    private static final String DRAWING = "1";

    private static final int TAG_DIGITS = 24;

    private final Film film;
    private final Pyramids pyramids;

    OpenFilm(Film film, Pyramids pyramids) {
        this.film = film;
        this.pyramids = pyramids;
    }

    public Film film() {
        return film;
    }

    /** Whether there is a picture to show. */
    public boolean hasPicture() {
        return film.state() != FilmState.KEPT_ASIDE;
    }

    /** Names what a view shows: the same name, the same bytes. */
    public String tag(FilmView view) {
        return film.bytes().sha256().substring(0, TAG_DIGITS) + "-" + DRAWING + "-"
                + Integer.toHexString(view.hashCode());
    }

    /**
     * What the film room must know to show the film.
     *
     * @throws NoPictureException if there is no picture after all
     */
    public FilmInfo info() {
        var prepared = prepared();
        var pyramid = prepared.pyramid();
        var look = prepared.look();
        return new FilmInfo(
                pyramid.width(),
                pyramid.height(),
                pyramid.tileSize(),
                pyramid.halvings(),
                look.windows(pyramid),
                look.least(pyramid),
                look.greatest(pyramid),
                Texts.of(film.scale().source()),
                FilmInfo.Scale.of(film.scale()),
                !pyramid.isColour());
    }

    /**
     * The view as JPEG.
     *
     * @throws IllegalArgumentException if the view lies outside the film
     * @throws NoPictureException if there is no picture after all
     */
    public byte[] jpeg(FilmView view) {
        var prepared = prepared();
        var pyramid = prepared.pyramid();
        try {
            var shades = prepared.look().shades(pyramid, view.window());
            return Drawing.toJpeg(Drawing.draw(pyramid, view.region(pyramid), shades), view.quality());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private Prepared prepared() {
        try {
            return switch (pyramids.of(film)) {
                case Prepared prepared -> prepared;
                case Failed failed ->
                    throw new NoPictureException(failed.aside().reason());
            };
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
