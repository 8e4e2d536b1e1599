/**
 * When to look again, and whom to look for: visits, the rules that set them, the recall of those who stay away, and the
 * letters to their families. Every child in care has exactly one open visit; the database refuses anything else.
 */
@ApplicationModule(
        allowedDependencies = {
            "access",
            "film",
            "kit",
            "kit::paper",
            "patient",
            "platform",
            "prognosis",
            "reading",
            "stock",
            "treatment",
            "science::forecast",
            "science::growth",
            "science::quantity"
        })
@NullMarked
package org.espalier.followup;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
