package org.espalier.film;

import java.time.LocalDate;
import java.util.List;
import org.espalier.access.SiteId;
import org.espalier.patient.ChildId;

/** Tells the radiographer's list who comes on a day. Whoever keeps appointments answers. */
public interface ExpectedChildren {

    /** The children with an appointment at the hospital on the day. */
    List<ChildId> expected(SiteId site, LocalDate day);
}
