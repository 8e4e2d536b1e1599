package org.espalier.cost;

import org.espalier.access.ChildRef;
import org.espalier.access.SiteId;
import org.espalier.patient.ChildId;

/**
 * A child's account at a hospital.
 *
 * @param payer who pays there; empty for the one the hospital's common prices are for
 */
public record Account(SiteId site, ChildId child, Pseudonym pseudonym, String payer) {

    ChildRef ref() {
        return new ChildRef(site, child.value());
    }
}
