/**
 * The demonstration: invented hospitals, staff and children, told through the same services and doors as any other,
 * with films that are drawn. Nothing here runs outside the profile {@code demo}, and nobody depends on it.
 */
@ApplicationModule(
        allowedDependencies = {
            "access",
            "cost",
            "film",
            "followup",
            "kit",
            "opinion",
            "patient",
            "plan",
            "platform",
            "reading",
            "science::alignment",
            "science::exposure",
            "science::quantity",
            "stock",
            "treatment"
        })
@NullMarked
package org.espalier.demo;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
