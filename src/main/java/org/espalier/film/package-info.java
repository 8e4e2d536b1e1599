/**
 * Films on their way: received, kept as they came, matched to a child or laid in the tray, decoded once, and shown
 * through a window. What cannot be shown is kept aside with a reason; what was acknowledged is never lost.
 */
@ApplicationModule(allowedDependencies = {"access", "kit", "patient", "platform", "science::quantity"})
@NullMarked
package org.espalier.film;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
