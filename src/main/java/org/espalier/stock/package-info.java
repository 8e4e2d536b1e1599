/**
 * What lies on which shelf: the catalogue, lots, shelves, and the movements from which everything else follows. It
 * knows of no child: who was given an implant is the id of whoever recorded it.
 */
@ApplicationModule(allowedDependencies = {"access", "kit", "platform", "science::quantity", "science::statistics"})
@NullMarked
package org.espalier.stock;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
