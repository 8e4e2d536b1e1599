package org.espalier.film;

import java.time.Duration;
import java.util.UUID;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.springframework.core.io.ByteArrayResource;
import org.springframework.core.io.FileSystemResource;
import org.springframework.core.io.Resource;
import org.springframework.http.CacheControl;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ProblemDetail;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.ExceptionHandler;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;
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

    @GetMapping("/api/pictures/{picture}/info")
    ResponseEntity<FilmInfo> info(@PathVariable UUID picture) {
        return large(
                picture,
                open -> ResponseEntity.ok().cacheControl(CacheControl.noStore()).body(open.info()));
    }

    @GetMapping("/api/pictures/{picture}/rendered")
    ResponseEntity<byte[]> rendered(
            @PathVariable UUID picture,
            @RequestParam @Nullable String viewport,
            @RequestParam @Nullable String window,
            @RequestParam @Nullable Integer quality) {
        var view = FilmView.of(viewport, window, quality);
        return large(picture, open -> ResponseEntity.ok()
                .cacheControl(CACHING)
                .contentType(MediaType.IMAGE_JPEG)
                .body(open.jpeg(view)));
    }

    private <T> ResponseEntity<T> large(UUID picture, Function<OpenFilm, ResponseEntity<T>> answer) {
        return pictures.openLarge(new PictureId(picture)).map(answer).orElseGet(() -> ResponseEntity.notFound()
                .build());
    }

    @ExceptionHandler
    ProblemDetail notOfItsForm(IllegalArgumentException refused) {
        return ProblemDetail.forStatusAndDetail(HttpStatus.BAD_REQUEST, String.valueOf(refused.getMessage()));
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
