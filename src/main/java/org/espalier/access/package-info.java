/**
 * Sites, their staff, who may do what where, and the log of who looked at whom. What a person may do is read from one
 * table, {@code permissions.csv}; what of it they see is decided by the walls in the database.
 */
@ApplicationModule(allowedDependencies = {"platform", "kit"})
@NullMarked
package org.espalier.access;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
