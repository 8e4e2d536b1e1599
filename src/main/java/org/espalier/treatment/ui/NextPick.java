package org.espalier.treatment.ui;

import java.time.LocalDate;
import org.espalier.kit.Texts;

/** When a child commonly comes again after a procedure; the local protocol prevails. */
enum NextPick {
    WOUND(14),
    MOTION(42),
    FILM(84);

    private final int days;

    NextPick(int days) {
        this.days = days;
    }

    LocalDate after(LocalDate day) {
        return day.plusDays(days);
    }

    String why() {
        return Texts.text("treatment.next." + name());
    }
}
