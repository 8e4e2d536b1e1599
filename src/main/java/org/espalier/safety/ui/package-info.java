/** The screens of safety notices. */
@NullMarked
package org.espalier.safety.ui;

import org.jspecify.annotations.NullMarked;
