package org.espalier.treatment;

import org.espalier.access.SiteId;
import org.espalier.patient.ChildId;

/**
 * A state, target, plan, finding or the end of care may be another one now. Told in the transaction that writes it
 * down, after every procedure and every other fact of treatment.
 */
public record TreatmentChanged(ChildId child, SiteId site) {}
