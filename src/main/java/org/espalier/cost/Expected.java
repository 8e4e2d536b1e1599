package org.espalier.cost;

import java.time.LocalDate;
import java.util.Optional;
import org.espalier.treatment.ProcedureKind;

/** What is still to come for a child: an operation that is wanted, or a visit that is open. */
public sealed interface Expected {

    /**
     * A wanted operation.
     *
     * @param listed whether theatre was asked for
     * @param on the day in theatre; empty while there is none
     */
    record Operation(ProcedureKind kind, boolean listed, Optional<LocalDate> on) implements Expected {}

    /**
     * An open visit.
     *
     * @param on its date, else the last good day
     * @param film whether a film is due with it
     */
    record Look(LocalDate on, boolean film) implements Expected {}
}
