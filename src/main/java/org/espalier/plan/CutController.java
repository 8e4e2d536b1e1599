package org.espalier.plan;

import java.util.Map;
import java.util.UUID;
import org.espalier.film.FilmId;
import org.espalier.kit.Texts;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.ExceptionHandler;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RestController;

/** Cuts while a hand moves: outside the screen's session, so that nothing waits for it. */
@RestController
class CutController {

    private final CutService cuts;

    CutController(CutService cuts) {
        this.cuts = cuts;
    }

    @PostMapping("/api/films/{film}/cut")
    CutAnswer cut(@PathVariable UUID film, @RequestBody CutRequest request) {
        return cuts.move(new FilmId(film), request);
    }

    /** A cut that cannot be made so. */
    @ExceptionHandler(IllegalArgumentException.class)
    ResponseEntity<Object> refuse(IllegalArgumentException refusal) {
        var message = refusal instanceof CutRefusedException cut
                ? Texts.text("plan.cut.refused." + cut.reason().name())
                : String.valueOf(refusal.getMessage());
        return ResponseEntity.badRequest().body(Map.of("message", message));
    }
}
