/**
 * The numbers of the product, computed once and without framework, database or clock. The sub-packages are the module's
 * published parts; quantity stands below statistics, these below alignment and growth, all below exposure.
 */
@ApplicationModule(allowedDependencies = {})
@NullMarked
package org.espalier.science;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
