/** Drawings and printed sheets of the planning desk. Nothing outside the module uses it. */
@NullMarked
package org.espalier.plan.internal;

import org.jspecify.annotations.NullMarked;
