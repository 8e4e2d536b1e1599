package org.espalier.followup;

import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.UUID;
import org.espalier.kit.Texts;
import org.espalier.patient.ChildId;
import org.springframework.http.CacheControl;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;

/** Letters to be printed and dates to be put into a calendar. A child the caller may not see is not there. */
@RestController
@RequestMapping("/api/children/{child}")
class LetterController {

    private static final MediaType CALENDAR = MediaType.parseMediaType("text/calendar;charset=UTF-8");

    private final LetterService letters;

    LetterController(LetterService letters) {
        this.letters = letters;
    }

    @GetMapping("letter")
    ResponseEntity<byte[]> letter(
            @PathVariable UUID child, @RequestParam LetterKind kind, @RequestParam LetterLanguage language) {
        return answer(letters.letter(new ChildId(child), kind, language), MediaType.APPLICATION_PDF, "letter.pdf");
    }

    @GetMapping("calendar")
    ResponseEntity<byte[]> calendar(@PathVariable UUID child, @RequestParam LetterLanguage language) {
        return answer(letters.calendar(new ChildId(child), language), CALENDAR, "visit.ics");
    }

    static ResponseEntity<byte[]> answer(Optional<LetterOutcome> outcome, MediaType type, String name) {
        return outcome.map(one -> switch (one) {
                    case LetterOutcome.Written(var bytes) ->
                        ResponseEntity.ok()
                                .cacheControl(CacheControl.noStore())
                                .contentType(type)
                                .header(HttpHeaders.CONTENT_DISPOSITION, "inline; filename=\"" + name + "\"")
                                .body(bytes);
                    case LetterOutcome.Refused(var reason) ->
                        ResponseEntity.status(HttpStatus.CONFLICT)
                                .contentType(new MediaType("text", "plain", StandardCharsets.UTF_8))
                                .body(Texts.of(reason).getBytes(StandardCharsets.UTF_8));
                })
                .orElseGet(() -> ResponseEntity.notFound().build());
    }
}
