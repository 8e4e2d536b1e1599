/** Files and commands for other programs. A file is taken whole or not at all, unless part of it is asked for. */
@ApplicationModule(
        allowedDependencies = {
            "access",
            "film",
            "followup",
            "kit",
            "patient",
            "platform",
            "reading",
            "science::alignment",
            "science::exposure",
            "science::forecast",
            "science::quantity",
            "stock",
            "treatment"
        })
@NullMarked
package org.espalier.interchange;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
