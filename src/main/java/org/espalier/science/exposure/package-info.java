/**
 * How a film was taken, what that does to each number, and whether its geometry fits the child. Judges nothing but
 * sizes.
 */
@NamedInterface("exposure")
@NullMarked
package org.espalier.science.exposure;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
