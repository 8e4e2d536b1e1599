/**
 * What care costs: tariffs, the charges that follow from facts, episodes and what a pathway costs. Money is exact and
 * has a currency; children are known by pseudonyms alone.
 */
@ApplicationModule(
        allowedDependencies = {
            "access",
            "film",
            "followup",
            "kit",
            "patient",
            "platform",
            "stock",
            "treatment",
            "science::quantity",
            "science::statistics"
        })
@NullMarked
package org.espalier.cost;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
