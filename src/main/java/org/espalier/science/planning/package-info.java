/**
 * What a cut, a hinge or a plate does to a limb: planes and centres of a deformity, single-cut rotation, wedges, the
 * axis of the leg after a correction, and how hard a screw is bent. Geometry only; it advises nothing.
 *
 * <p>Frame of every limb: that of a right one, lateral, anterior, proximal; a left limb is entered with the same
 * anatomical signs. Varus, procurvatum and internal torsion of the distal fragment are positive.
 */
@NamedInterface("planning")
@NullMarked
package org.espalier.science.planning;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
