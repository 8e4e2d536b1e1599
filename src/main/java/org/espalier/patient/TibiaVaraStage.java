package org.espalier.patient;

import java.time.LocalDate;
import org.espalier.science.quantity.Side;

/**
 * The stage of early onset tibia vara by one reader on one film: six stages by the shape of the proximal tibial
 * epiphysis.
 *
 * @param on the day the film was taken
 * @param stage I to VI
 */
public record TibiaVaraStage(LocalDate on, Side side, Stage stage) implements Finding {

    /** The stages in their order. */
    public enum Stage {
        I,
        II,
        III,
        IV,
        V,
        VI
    }
}
