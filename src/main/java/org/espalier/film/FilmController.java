package org.espalier.film;

import java.time.Duration;
import java.util.UUID;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.springframework.http.CacheControl;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ProblemDetail;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.ExceptionHandler;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;
import org.springframework.web.context.request.WebRequest;

/** Pictures of films for the film room. A film the caller may not see is not there. */
@RestController
@RequestMapping("/api/films/{film}")
class FilmController {

    /** Short: a browser that somebody else sits down at must ask again. */
    private static final CacheControl CACHING =
            CacheControl.maxAge(Duration.ofMinutes(5)).cachePrivate();

    private final FilmImages images;

    FilmController(FilmImages images) {
        this.images = images;
    }

    @GetMapping("info")
    ResponseEntity<FilmInfo> info(@PathVariable UUID film) {
        return withPicture(
                film,
                open -> ResponseEntity.ok().cacheControl(CacheControl.noStore()).body(open.info()));
    }

    @GetMapping("rendered")
    ResponseEntity<byte[]> rendered(
            @PathVariable UUID film,
            @RequestParam @Nullable String viewport,
            @RequestParam @Nullable String window,
            @RequestParam @Nullable Integer quality,
            WebRequest request) {
        var view = FilmView.of(viewport, window, quality);
        return withPicture(film, open -> jpeg(open, view, request));
    }

    @GetMapping("thumbnail")
    ResponseEntity<byte[]> thumbnail(@PathVariable UUID film, WebRequest request) {
        return withPicture(film, open -> jpeg(open, FilmView.thumbnail(), request));
    }

    private <T> ResponseEntity<T> withPicture(UUID film, Function<OpenFilm, ResponseEntity<T>> answer) {
        return images.open(new FilmId(film))
                .filter(OpenFilm::hasPicture)
                .map(answer)
                .orElseGet(() -> ResponseEntity.notFound().build());
    }

    private static ResponseEntity<byte[]> jpeg(OpenFilm film, FilmView view, WebRequest request) {
        var tag = film.tag(view);
        if (request.checkNotModified(tag)) {
            return ResponseEntity.status(HttpStatus.NOT_MODIFIED)
                    .cacheControl(CACHING)
                    .eTag(tag)
                    .build();
        }
        return ResponseEntity.ok()
                .cacheControl(CACHING)
                .eTag(tag)
                .contentType(MediaType.IMAGE_JPEG)
                .body(film.jpeg(view));
    }

    @ExceptionHandler
    ProblemDetail notOfItsForm(IllegalArgumentException refused) {
        return ProblemDetail.forStatusAndDetail(HttpStatus.BAD_REQUEST, String.valueOf(refused.getMessage()));
    }
}
