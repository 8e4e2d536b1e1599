package org.espalier.safety;

import org.espalier.access.SiteId;

/**
 * How far a hospital is with a notice, in numbers alone.
 *
 * @param quarantined pieces in quarantine, for analysis, kept by a family or disposed of
 * @param elsewhere pieces that are not in quarantine yet: on their way
 * @param certain children who carry the lot
 * @param possible children who may carry it
 * @param former children who carried it, for information
 * @param told of those who carry it, or may
 */
public record SiteProgress(
        SiteId site, int quarantined, int elsewhere, int certain, int possible, int former, int told) {

    /** How many are still to be told. */
    public int untold() {
        return certain + possible - told;
    }
}
