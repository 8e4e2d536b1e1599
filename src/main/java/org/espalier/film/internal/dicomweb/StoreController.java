package org.espalier.film.internal.dicomweb;

import jakarta.servlet.http.HttpServletRequest;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.fileupload2.core.FileUploadSizeException;
import org.apache.commons.fileupload2.core.MultipartInput;
import org.espalier.access.SiteId;
import org.espalier.film.FilmId;
import org.espalier.film.FilmService;
import org.espalier.film.Received;
import org.springframework.http.HttpStatus;
import org.springframework.http.InvalidMediaTypeException;
import org.springframework.http.MediaType;
import org.springframework.http.ProblemDetail;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.ExceptionHandler;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RestController;

/** STOW-RS (PS3.18 section 10.5): films come in one after the other, straight from the request to the door. */
@RestController
class StoreController {

    private static final int BUFFER = 1 << 16;

    private final FilmService films;
    private final InstanceRepository instances;
    private final ArchiveSite site;

    StoreController(FilmService films, InstanceRepository instances, ArchiveSite site) {
        this.films = films;
        this.instances = instances;
        this.site = site;
    }

    @PostMapping("/dicom-web/studies")
    ResponseEntity<Map<String, Object>> store(HttpServletRequest request) throws IOException {
        var boundary = boundary(request);
        if (boundary.isEmpty()) {
            return ResponseEntity.status(HttpStatus.UNSUPPORTED_MEDIA_TYPE).build();
        }
        var parts = MultipartInput.builder()
                .setInputStream(request.getInputStream())
                .setBoundary(boundary.get().getBytes(StandardCharsets.ISO_8859_1))
                .setBufferSize(BUFFER)
                .get();
        var report = new StoreReport();
        boolean more = parts.skipPreamble();
        if (!more) {
            throw new MultipartInput.MalformedStreamException("no part");
        }
        for (; more; more = parts.readBoundary()) {
            store(site.get(), parts, report);
        }
        return ResponseEntity.status(report.status())
                .contentType(DicomTypes.JSON)
                .body(report.body());
    }

    private static Optional<String> boundary(HttpServletRequest request) {
        try {
            var type = MediaType.parseMediaType(String.valueOf(request.getContentType()));
            return Optional.ofNullable(type.getParameter("boundary"))
                    .filter(boundary -> DicomTypes.MULTIPART_RELATED.includes(type))
                    .map(boundary -> boundary.replaceAll("^\"|\"$", ""))
                    .filter(boundary -> !boundary.isEmpty());
        } catch (InvalidMediaTypeException e) {
            return Optional.empty();
        }
    }

    private void store(SiteId to, MultipartInput parts, StoreReport report) throws IOException {
        var headers = parts.readHeaders().toLowerCase(Locale.ROOT);
        if (headers.contains("content-type:") && !headers.contains(DicomTypes.DICOM.toString())) {
            throw new MultipartInput.MalformedStreamException("a part is of another type than application/dicom");
        }
        try (var bytes = parts.newInputStream()) {
            switch (films.receive(to, bytes, "DICOMweb")) {
                case Received.Taken taken -> stored(taken.film(), report);
                case Received.AlreadyHere known -> stored(known.film(), report);
                case Received.KeptAside aside ->
                    report.keptAside(instances.find(aside.film().value()), aside.reason());
                case Received.Refused refused -> report.refused(refused.reason());
            }
        }
    }

    private void stored(FilmId film, StoreReport report) {
        report.stored(instances.find(film.value()).orElseThrow());
    }

    @ExceptionHandler({MultipartInput.MalformedStreamException.class, FileUploadSizeException.class})
    ProblemDetail notOfItsForm() {
        return ProblemDetail.forStatusAndDetail(
                HttpStatus.BAD_REQUEST, "The request is not a whole multipart/related of application/dicom parts.");
    }
}
