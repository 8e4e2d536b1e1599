package org.espalier.film;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.Semaphore;
import org.espalier.film.FilmInspector.Aside;
import org.espalier.film.tiles.BrokenPyramidException;
import org.espalier.film.tiles.Picture;
import org.espalier.film.tiles.Pyramid;
import org.espalier.platform.BlobRef;
import org.espalier.platform.Blobs;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.stereotype.Component;

/**
 * The folder of prepared pictures beside the film folder. It is a derivative: whatever is missing or broken in it is
 * built anew from the film. One picture is decoded at a time, so that memory stays bounded whatever arrives.
 */
@Component
class Pyramids {

    private static final Logger LOG = LoggerFactory.getLogger(Pyramids.class);
    private static final int AT_HAND = 128;

    private final Path folder;
    private final Blobs blobs;
    private final Semaphore decoding = new Semaphore(1, true);
    private final Map<String, Prepared> atHand = new LinkedHashMap<>(AT_HAND, 0.75f, true) {
        private static final long serialVersionUID = 1;

        @Override
        protected boolean removeEldestEntry(Map.Entry<String, Prepared> eldest) {
            return size() > AT_HAND;
        }
    };

    Pyramids(Blobs blobs, @Value("${espalier.data}") Path data) {
        this.blobs = blobs;
        folder = data.toAbsolutePath().resolve("pyramids");
    }

    /** Whether another picture is being decoded just now. */
    boolean isBusy() {
        return decoding.availablePermits() == 0;
    }

    /** The prepared picture of a film, built first when it is not there; or why there is none. */
    Outcome of(Film film) throws IOException {
        var known = atHand(film.bytes().sha256());
        return known != null && Files.exists(file(film.bytes())) ? known : prepare(film.kind(), film.bytes());
    }

    /** Decodes a film and cuts it into tiles, unless that was done before. */
    Outcome prepare(FilmKind kind, BlobRef bytes) throws IOException {
        decoding.acquireUninterruptibly();
        try {
            var outcome = Files.exists(file(bytes)) ? reopen(kind, bytes) : build(kind, bytes);
            if (outcome instanceof Prepared prepared) {
                keepAtHand(bytes.sha256(), prepared);
            }
            return outcome;
        } finally {
            decoding.release();
        }
    }

    private Outcome reopen(FilmKind kind, BlobRef bytes) throws IOException {
        try {
            return new Prepared(Pyramid.open(file(bytes)), FilmDecoder.look(kind, blobs.path(bytes)));
        } catch (BrokenPyramidException e) {
            LOG.warn("Tiles of {} are broken and are built anew: {}", bytes.sha256(), e.getMessage());
            return build(kind, bytes);
        }
    }

    private Outcome build(FilmKind kind, BlobRef bytes) throws IOException {
        return switch (FilmDecoder.decode(kind, blobs.path(bytes))) {
            case FilmDecoder.Decoded(Picture picture, Look look) ->
                new Prepared(Pyramid.build(picture, file(bytes)), look);
            case FilmDecoder.Undecodable(var aside) -> new Failed(aside);
        };
    }

    private @Nullable Prepared atHand(String key) {
        synchronized (atHand) {
            return atHand.get(key);
        }
    }

    private void keepAtHand(String key, Prepared prepared) {
        synchronized (atHand) {
            atHand.put(key, prepared);
        }
    }

    private Path file(BlobRef bytes) {
        return folder.resolve(bytes.sha256().substring(0, 2)).resolve(bytes.sha256() + ".tiles");
    }

    /** What came of preparing a picture. */
    sealed interface Outcome {}

    /** A picture that can be shown, and how its values become shades. */
    record Prepared(Pyramid pyramid, Look look) implements Outcome {}

    /** No picture, and why. */
    record Failed(Aside aside) implements Outcome {}
}
