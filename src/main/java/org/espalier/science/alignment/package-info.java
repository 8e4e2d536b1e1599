/**
 * Frontal alignment of one limb from landmarks, and how far a reading can be trusted. Signs are anatomical, never of
 * the image.
 */
@NamedInterface("alignment")
@NullMarked
package org.espalier.science.alignment;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
