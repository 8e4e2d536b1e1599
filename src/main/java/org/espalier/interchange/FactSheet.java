package org.espalier.interchange;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.espalier.treatment.Treatment;
import org.espalier.treatment.TreatmentFact;

/** A file of which each row is one fact of a child's treatment. */
interface FactSheet<F extends TreatmentFact> {

    ClinicFile file();

    /** What the row says; empty, with the reasons written down, when it cannot be read. */
    Optional<F> read(ClinicRow row);

    /** The cells of a fact but for the child's number. */
    Map<String, String> cells(F fact);

    /** What stands on record, in the order it is written. */
    List<F> standing(Treatment treatment);
}
