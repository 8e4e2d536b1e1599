/**
 * How a child's size stands among children of the same age and sex, what each growth plate has left, when growth ends,
 * and what holding one side of a plate does. Every table names its source, population and state of checking.
 */
@NamedInterface("growth")
@NullMarked
package org.espalier.science.growth;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
