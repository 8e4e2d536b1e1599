/** The screen that opens first. */
@NullMarked
package org.espalier.today.ui;

import org.jspecify.annotations.NullMarked;
