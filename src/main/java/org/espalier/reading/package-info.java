/**
 * One person's landmarks on one film and the numbers that follow from them: drafted at every change, signed, never
 * edited, only superseded. Every number is computed by science, here and nowhere else.
 */
@ApplicationModule(
        allowedDependencies = {
            "film",
            "patient",
            "access",
            "kit",
            "platform",
            "science::quantity",
            "science::alignment",
            "science::exposure",
            "science::statistics"
        })
@NullMarked
package org.espalier.reading;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
