/**
 * A case put before colleagues at other hospitals: frozen and de-identified, opened to named people for a limited time,
 * answered, closed with what was decided, and looked at again when its outcome is known.
 */
@ApplicationModule(
        allowedDependencies = {
            "access",
            "film",
            "followup",
            "kit",
            "kit::paper",
            "patient",
            "plan",
            "platform",
            "prognosis",
            "reading",
            "treatment",
            "science::alignment",
            "science::quantity"
        })
@NullMarked
package org.espalier.opinion;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
