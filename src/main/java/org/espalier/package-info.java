/** Espalier: guided growth followed across a network of hospitals. Each sub-package is a module. */
@NullMarked
package org.espalier;

import org.jspecify.annotations.NullMarked;
