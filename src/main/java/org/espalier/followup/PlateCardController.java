package org.espalier.followup;

import java.util.UUID;
import org.espalier.patient.ChildId;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;

/** Plate cards to be printed. A child the caller may not see is not there. */
@RestController
@RequestMapping("/api/children/{child}")
class PlateCardController {

    private final PlateCardService cards;

    PlateCardController(PlateCardService cards) {
        this.cards = cards;
    }

    @GetMapping("plate-card")
    ResponseEntity<byte[]> card(@PathVariable UUID child, @RequestParam LetterLanguage language) {
        return LetterController.answer(
                cards.card(new ChildId(child), language), MediaType.APPLICATION_PDF, "plate-card.pdf");
    }
}
