package org.espalier.reading;

import java.util.Map;
import java.util.UUID;
import org.springframework.http.HttpStatus;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.ExceptionHandler;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RestController;

/** Measures while a hand moves: outside the screen's session, so that nothing waits for it. */
@RestController
class MeasureController {

    private final DraftService drafts;

    MeasureController(DraftService drafts) {
        this.drafts = drafts;
    }

    @PostMapping("/api/readings/{draft}/measure")
    ResponseEntity<Object> measure(@PathVariable UUID draft, @RequestBody MeasureRequest request) {
        return switch (drafts.measure(new ReadingId(draft), request)) {
            case MeasureOutcome.Answered answered -> ResponseEntity.ok(answered.answer());
            case MeasureOutcome.Conflict conflict ->
                ResponseEntity.status(HttpStatus.CONFLICT).body(conflict);
            case MeasureOutcome.Gone gone ->
                ResponseEntity.status(HttpStatus.UNPROCESSABLE_CONTENT).body(gone);
        };
    }

    /** Points that no hand can have set. */
    @ExceptionHandler(IllegalArgumentException.class)
    ResponseEntity<Object> refuse(IllegalArgumentException refusal) {
        return ResponseEntity.badRequest().body(Map.of("message", String.valueOf(refusal.getMessage())));
    }
}
