/**
 * What every module stands on: the database and its roles, the caller each transaction speaks for, jobs, and the film
 * folder. Knows nothing of children, films or hospitals.
 */
@ApplicationModule(allowedDependencies = {})
@NullMarked
package org.espalier.platform;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
