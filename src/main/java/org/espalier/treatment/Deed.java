package org.espalier.treatment;

import java.time.LocalDate;
import java.util.List;

/** An act that stands, with the day it was done on. */
record Deed(LocalDate on, boolean elsewhere, ProcedureId procedure, Act act) {

    /** The acts of procedures that stand, in the order in which they were done. */
    static List<Deed> of(List<Procedure> standing) {
        return standing.stream()
                .flatMap(procedure -> procedure.data().stream().flatMap(data -> data.acts().stream()
                        .map(act -> new Deed(data.on(), data.elsewhere(), procedure.id(), act))))
                .toList();
    }
}
