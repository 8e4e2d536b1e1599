/**
 * What every screen is made of: theme, identity banner, course chart, dates and quantities as text. It knows nothing of
 * where children or films are kept.
 */
@ApplicationModule(allowedDependencies = {"science::quantity"})
@NullMarked
package org.espalier.kit;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
