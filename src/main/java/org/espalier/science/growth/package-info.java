/** How a child's size stands among children of the same age and sex. Every table names its source and population. */
@NamedInterface("growth")
@NullMarked
package org.espalier.science.growth;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
