package org.espalier.opinion;

import java.time.Duration;
import java.util.Map;
import java.util.UUID;
import java.util.function.Function;
import org.espalier.film.FilmInfo;
import org.espalier.film.FilmView;
import org.espalier.film.OpenFilm;
import org.espalier.reading.MeasureOutcome;
import org.espalier.reading.MeasureRequest;
import org.jspecify.annotations.Nullable;
import org.springframework.core.io.FileSystemResource;
import org.springframework.core.io.Resource;
import org.springframework.http.CacheControl;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.ExceptionHandler;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;

/**
 * Copies of films, photos and clips, their measuring and summaries of threads. What ended for the caller is not there.
 * Nothing is kept by a browser.
 */
@RestController
@RequestMapping("/api/opinions")
class OpinionController {

    private static final MediaType DICOM = MediaType.parseMediaType("application/dicom");

    /** So short that a grant that ended ends in the browser too. */
    private static final CacheControl TILES =
            CacheControl.maxAge(Duration.ofSeconds(30)).cachePrivate();

    private final OpinionFilmService films;
    private final ClosingService closing;

    OpinionController(OpinionFilmService films, ClosingService closing) {
        this.films = films;
        this.closing = closing;
    }

    @GetMapping("{thread}/films/{film}/info")
    ResponseEntity<FilmInfo> info(@PathVariable UUID thread, @PathVariable UUID film) {
        return with(thread, film, open -> uncached().body(open.info()));
    }

    @GetMapping("{thread}/films/{film}/rendered")
    ResponseEntity<byte[]> rendered(
            @PathVariable UUID thread,
            @PathVariable UUID film,
            @RequestParam @Nullable String viewport,
            @RequestParam @Nullable String window,
            @RequestParam @Nullable Integer quality) {
        var view = FilmView.of(viewport, window, quality);
        return with(thread, film, open -> jpeg(open, view));
    }

    @GetMapping("{thread}/films/{film}/thumbnail")
    ResponseEntity<byte[]> thumbnail(@PathVariable UUID thread, @PathVariable UUID film) {
        return with(thread, film, open -> jpeg(open, FilmView.thumbnail()));
    }

    @GetMapping("{thread}/films/{film}/dicom")
    ResponseEntity<byte[]> dicom(@PathVariable UUID thread, @PathVariable UUID film) {
        return films.file(new ThreadId(thread), film)
                .map(bytes -> file("copy.dcm", DICOM, bytes))
                .orElseGet(() -> ResponseEntity.notFound().build());
    }

    @GetMapping("{thread}/clips/{clip}")
    ResponseEntity<Resource> clip(@PathVariable UUID thread, @PathVariable UUID clip) {
        return films.clip(new ThreadId(thread), clip)
                .map(open -> ResponseEntity.ok()
                        .cacheControl(TILES)
                        .header(HttpHeaders.CONTENT_DISPOSITION, "inline")
                        .contentType(MediaType.parseMediaType(open.mediaType()))
                        .<Resource>body(new FileSystemResource(open.file())))
                .orElseGet(() -> ResponseEntity.notFound().build());
    }

    @PostMapping("readings/{draft}/measure")
    ResponseEntity<Object> measure(@PathVariable UUID draft, @RequestBody MeasureRequest request) {
        return switch (films.measure(draft, request)) {
            case MeasureOutcome.Answered answered -> ResponseEntity.ok(answered.answer());
            case MeasureOutcome.Conflict conflict ->
                ResponseEntity.status(HttpStatus.CONFLICT).body(conflict);
            case MeasureOutcome.Gone gone ->
                ResponseEntity.status(HttpStatus.UNPROCESSABLE_CONTENT).body(gone);
        };
    }

    @GetMapping("{thread}/summary")
    ResponseEntity<byte[]> summary(@PathVariable UUID thread) {
        return closing.summary(new ThreadId(thread))
                .map(bytes -> file("summary.pdf", MediaType.APPLICATION_PDF, bytes))
                .orElseGet(() -> ResponseEntity.notFound().build());
    }

    private <T> ResponseEntity<T> with(UUID thread, UUID film, Function<OpenFilm, ResponseEntity<T>> answer) {
        return films.open(new ThreadId(thread), film).map(answer).orElseGet(() -> ResponseEntity.notFound()
                .build());
    }

    private static ResponseEntity<byte[]> jpeg(OpenFilm film, FilmView view) {
        return ResponseEntity.ok()
                .cacheControl(TILES)
                .contentType(MediaType.IMAGE_JPEG)
                .body(film.jpeg(view));
    }

    private static ResponseEntity<byte[]> file(String name, MediaType type, byte[] bytes) {
        return uncached()
                .header(
                        HttpHeaders.CONTENT_DISPOSITION,
                        ContentDisposition.attachment().filename(name).build().toString())
                .contentType(type)
                .body(bytes);
    }

    private static ResponseEntity.BodyBuilder uncached() {
        return ResponseEntity.ok().cacheControl(CacheControl.noStore());
    }

    @ExceptionHandler(IllegalArgumentException.class)
    ResponseEntity<Object> notOfItsForm(IllegalArgumentException refused) {
        return ResponseEntity.badRequest().body(Map.of("message", String.valueOf(refused.getMessage())));
    }
}
