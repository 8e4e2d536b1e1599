package org.espalier.followup;

import java.util.Objects;

/**
 * What a hospital's dates rest on beside the facts of its children.
 *
 * @param waitMonths from look to theatre: by its own records, or its limit while they are too few
 */
record SiteRules(Limits limits, double waitMonths) {

    /** Another mark says that dates worked out by these rules are to be worked out anew. */
    String mark() {
        return Integer.toHexString(Objects.hash(limits, waitMonths));
    }
}
