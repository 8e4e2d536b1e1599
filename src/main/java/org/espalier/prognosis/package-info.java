/**
 * Where each physis is going and how much growth is left: forecasts from the facts on record, kept as they were given,
 * and the rates each centre's own limbs teach. What is shown is computed from the facts at the time; nothing here
 * decides.
 */
@ApplicationModule(
        allowedDependencies = {
            "access",
            "film",
            "kit",
            "patient",
            "platform",
            "reading",
            "treatment",
            "science::alignment",
            "science::forecast",
            "science::growth",
            "science::quantity",
            "science::statistics"
        })
@NullMarked
package org.espalier.prognosis;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
