/**
 * Safety notices: one lot to quarantine everywhere at once, to the children who carry it, and told to each of them. And
 * what broke in a child, as a report with its lot.
 */
@ApplicationModule(
        allowedDependencies = {"access", "kit", "patient", "platform", "science::quantity", "stock", "treatment"})
@NullMarked
package org.espalier.safety;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
