/**
 * Where an angle is going, as a spread and never as a single number. Degrees left to a target are + while still
 * deformed.
 */
@NamedInterface("forecast")
@NullMarked
package org.espalier.science.forecast;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
