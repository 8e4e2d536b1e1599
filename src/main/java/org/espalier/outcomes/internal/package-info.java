/** Drawings of outcomes. Nothing outside the module uses it. */
@NullMarked
package org.espalier.outcomes.internal;

import org.jspecify.annotations.NullMarked;
