/** Screens of the planning desk. */
@NullMarked
package org.espalier.plan.ui;

import org.jspecify.annotations.NullMarked;
