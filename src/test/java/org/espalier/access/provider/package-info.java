/** A provider of single sign-on that tests run: a real one, on a port of its own. */
@NullMarked
package org.espalier.access.provider;

import org.jspecify.annotations.NullMarked;
