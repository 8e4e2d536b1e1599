/**
 * The surgeon's planning desk: what could be done at a limb side by side, and sheets of geometry for it. Numbers and
 * published figures with their doubt; it advises nothing, ranks nothing and chooses nothing.
 */
@ApplicationModule(
        allowedDependencies = {
            "access",
            "cost",
            "film",
            "kit",
            "kit::paper",
            "patient",
            "platform",
            "prognosis",
            "reading",
            "treatment",
            "science::alignment",
            "science::forecast",
            "science::growth",
            "science::planning",
            "science::quantity",
            "science::statistics"
        })
@NullMarked
package org.espalier.plan;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
