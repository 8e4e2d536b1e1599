package org.espalier.film.internal.dicomweb;

import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.espalier.film.FilmView;
import org.espalier.film.OpenFilm;
import org.espalier.platform.Blobs;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ProblemDetail;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.ExceptionHandler;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestHeader;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;

/** WADO-RS (PS3.18 section 10.4): films as they were received, their tags, and their pictures. */
@RestController
@RequestMapping("/dicom-web/studies/{study}")
class RetrieveController {

    private static final String INSTANCE = "/series/{series}/instances/{instance}";

    private final StoredFilms films;
    private final Blobs blobs;

    RetrieveController(StoredFilms films, Blobs blobs) {
        this.films = films;
        this.blobs = blobs;
    }

    @GetMapping({"", "/series/{series}", INSTANCE})
    void bytes(
            @PathVariable String study,
            @PathVariable(required = false) @Nullable String series,
            @PathVariable(required = false) @Nullable String instance,
            @RequestHeader(name = HttpHeaders.ACCEPT, required = false) @Nullable String accept,
            HttpServletResponse response)
            throws IOException {
        var found = films.of(study, series, instance);
        var wanted = Wanted.of(accept);
        if (found.isEmpty()) {
            response.sendError(HttpStatus.NOT_FOUND.value());
        } else if (!found.stream()
                .allMatch(film -> wanted.allows(film.instance().transferSyntax()))) {
            response.sendError(HttpStatus.NOT_ACCEPTABLE.value());
        } else if (instance != null && wanted.single()) {
            response.setContentType(type(found.getFirst()));
            blobs.open(found.getFirst().open().film().bytes()).transferTo(response.getOutputStream());
        } else {
            sendAll(found, response);
        }
    }

    private void sendAll(List<StoredFilm> found, HttpServletResponse response) throws IOException {
        var boundary = UUID.randomUUID().toString();
        response.setContentType("multipart/related; type=\"application/dicom\"; boundary=" + boundary);
        var output = response.getOutputStream();
        for (var film : found) {
            write(output, "--" + boundary + "\r\nContent-Type: " + type(film) + "\r\n\r\n");
            try (var bytes = blobs.open(film.open().film().bytes())) {
                bytes.transferTo(output);
            }
            write(output, "\r\n");
        }
        write(output, "--" + boundary + "--\r\n");
    }

    private static String type(StoredFilm film) {
        var syntax = film.instance().transferSyntax();
        return syntax == null ? DicomTypes.DICOM.toString() : DicomTypes.DICOM + ";transfer-syntax=" + syntax;
    }

    private static void write(OutputStream output, String text) throws IOException {
        output.write(text.getBytes(StandardCharsets.US_ASCII));
    }

    @GetMapping({"/metadata", "/series/{series}/metadata", INSTANCE + "/metadata"})
    ResponseEntity<List<Map<String, Object>>> metadata(
            @PathVariable String study,
            @PathVariable(required = false) @Nullable String series,
            @PathVariable(required = false) @Nullable String instance) {
        var found = films.of(study, series, instance);
        return found.isEmpty()
                ? ResponseEntity.notFound().build()
                : ResponseEntity.ok()
                        .contentType(DicomTypes.JSON)
                        .body(found.stream().map(this::tags).toList());
    }

    private Map<String, Object> tags(StoredFilm film) {
        return films.tags(film).attributes();
    }

    @GetMapping({INSTANCE + "/rendered", INSTANCE + "/frames/1/rendered"})
    ResponseEntity<byte[]> rendered(
            @PathVariable String study,
            @PathVariable String series,
            @PathVariable String instance,
            @RequestParam @Nullable String viewport,
            @RequestParam @Nullable String window,
            @RequestParam @Nullable Integer quality) {
        var view = FilmView.of(viewport, window, quality);
        Optional<OpenFilm> film = films.of(study, series, instance).stream()
                .map(StoredFilm::open)
                .filter(OpenFilm::hasPicture)
                .findFirst();
        return film.map(open ->
                        ResponseEntity.ok().contentType(MediaType.IMAGE_JPEG).body(open.jpeg(view)))
                .orElseGet(() -> ResponseEntity.notFound().build());
    }

    @ExceptionHandler
    ProblemDetail notOfItsForm(IllegalArgumentException refused) {
        return ProblemDetail.forStatusAndDetail(HttpStatus.BAD_REQUEST, String.valueOf(refused.getMessage()));
    }
}
