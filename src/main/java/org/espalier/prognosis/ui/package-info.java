/** Where a child's limbs are going, and what a centre's own limbs taught. Nothing of it is seen by other modules. */
@NullMarked
package org.espalier.prognosis.ui;

import org.jspecify.annotations.NullMarked;
