package org.espalier.prognosis;

import java.time.LocalDate;

/**
 * By when tibia vara that began early is decided: an osteotomy before the fourth birthday recurs less, and half a year
 * before it a plate must have shown whether it works.
 *
 * <p>Source: recurrence, J Bone Joint Surg Am 2009;91:1758 and J Pediatr Orthop 2002;22:638 (46 % to 4 years, 72 to 94
 * % later); the last start of a plate is judged.
 *
 * @param plateBy at 3.3 years
 * @param cutBefore the fourth birthday
 */
public record EarlyDecision(LocalDate plateBy, LocalDate cutBefore) {

    private static final int MONTHS_TO_SEE = 8;

    static EarlyDecision of(LocalDate birth) {
        var fourth = birth.plusYears(4);
        return new EarlyDecision(fourth.minusMonths(MONTHS_TO_SEE), fourth);
    }
}
