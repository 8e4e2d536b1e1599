/** The frame around every screen: who is signed in, the way to each place, and the way in. */
@ApplicationModule(allowedDependencies = {"platform", "access", "kit"})
@NullMarked
package org.espalier.shell;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
