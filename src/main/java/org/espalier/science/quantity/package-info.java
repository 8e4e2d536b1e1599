/** Values with their unit in the name. Only a calibration turns points of a film into points of the plane. */
@NamedInterface("quantity")
@NullMarked
package org.espalier.science.quantity;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
