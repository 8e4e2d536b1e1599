package org.espalier.film;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.espalier.film.internal.clip.ClipNotUnderstood;
import org.espalier.film.internal.clip.SilentMp4;
import org.espalier.film.internal.clip.SilentWebm;
import org.espalier.platform.Blobs;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.stereotype.Component;

/**
 * Makes copies of clips. The frames stay as they are, for no program of the house draws them anew: who may have a copy
 * made has played the clip and answers for what can be seen in it.
 */
@Component
public class ClipCopies {

    private static final Logger LOG = LoggerFactory.getLogger(ClipCopies.class);

    private final Blobs blobs;

    ClipCopies(Blobs blobs) {
        this.blobs = blobs;
    }

    /**
     * Copies a clip; empty when its file is not understood so far that nothing beside the picture would be left in it.
     */
    public Optional<ClipCopy> copy(ClinicalPicture clip) {
        try {
            var bytes = Files.readAllBytes(blobs.path(clip.bytes()));
            if (clip.kind() == PictureKind.MP4) {
                SilentMp4.strip(bytes);
            } else {
                SilentWebm.strip(bytes);
            }
            var kept = blobs.put(new ByteArrayInputStream(bytes), bytes.length);
            return Optional.of(new ClipCopy(clip.kind(), kept, clip.length().orElseThrow()));
        } catch (ClipNotUnderstood e) {
            LOG.info("Clip {} is not copied: {}", clip.id().value(), e.getMessage());
            return Optional.empty();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The file of a copy. */
    public Path file(ClipCopy copy) {
        return blobs.path(copy.bytes());
    }
}
