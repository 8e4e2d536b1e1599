/**
 * What must I do now? One read of what waits at each hospital the reader treats children at. Nobody depends on it.
 */
@ApplicationModule(
        allowedDependencies = {
            "access",
            "film",
            "kit",
            "opinion",
            "patient",
            "platform",
            "prognosis",
            "science::forecast",
            "science::quantity",
            "stock",
            "treatment"
        })
@NullMarked
package org.espalier.today;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
