/**
 * What came of the plates that were placed, and whether what was foretold of them was honest. It shows and compares; it
 * ranks nobody.
 */
@ApplicationModule(
        allowedDependencies = {
            "access",
            "cost",
            "followup",
            "kit",
            "kit::paper",
            "patient",
            "platform",
            "prognosis",
            "reading",
            "treatment",
            "science::forecast",
            "science::growth",
            "science::quantity",
            "science::statistics"
        })
@NullMarked
package org.espalier.outcomes;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
