/**
 * Pages and drawings to be printed: built element by element, every text escaped, and set in the typeface of the
 * screens.
 */
@NamedInterface("paper")
@NullMarked
package org.espalier.kit.paper;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
