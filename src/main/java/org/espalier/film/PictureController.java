package org.espalier.film;

import java.time.Duration;
import java.util.UUID;
import org.springframework.core.io.ByteArrayResource;
import org.springframework.core.io.FileSystemResource;
import org.springframework.core.io.Resource;
import org.springframework.http.CacheControl;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RestController;

/** Photos and clips for the examination page; of a clip any range. One the caller may not see is not there. */
@RestController
class PictureController {

    private static final CacheControl CACHING =
            CacheControl.maxAge(Duration.ofMinutes(5)).cachePrivate();

    private final PictureService pictures;

    PictureController(PictureService pictures) {
        this.pictures = pictures;
    }

    @GetMapping("/api/pictures/{picture}")
    ResponseEntity<Resource> show(@PathVariable UUID picture) {
        return pictures.open(new PictureId(picture))
                .map(PictureController::answer)
                .orElseGet(() -> ResponseEntity.notFound().build());
    }

    private static ResponseEntity<Resource> answer(OpenPicture open) {
        var kind = open.picture().kind();
        var type = kind.isClip() ? MediaType.parseMediaType(kind.mediaType()) : MediaType.IMAGE_JPEG;
        var body = kind.isClip() ? new FileSystemResource(open.clip()) : new ByteArrayResource(open.photo());
        return ResponseEntity.ok()
                .cacheControl(CACHING)
                .header(HttpHeaders.CONTENT_DISPOSITION, "inline")
                .contentType(type)
                .body(body);
    }
}
