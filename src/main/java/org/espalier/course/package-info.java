/**
 * The course of one child: every film and what was read from it, on one time axis and as a list. A screen with one read
 * service; nobody depends on it.
 */
@ApplicationModule(
        allowedDependencies = {
            "access",
            "kit",
            "kit::paper",
            "patient",
            "prognosis",
            "film",
            "reading",
            "followup",
            "treatment",
            "science::quantity",
            "science::alignment",
            "science::forecast",
            "science::growth"
        })
@NullMarked
package org.espalier.course;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
