/** Files and commands for other programs. A file is taken whole or not at all, unless part of it is asked for. */
@ApplicationModule(allowedDependencies = {"science::quantity", "science::alignment", "science::forecast"})
@NullMarked
package org.espalier.interchange;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
