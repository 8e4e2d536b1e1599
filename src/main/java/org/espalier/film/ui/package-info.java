/** The screen on which films come in and find their child. Nothing outside this package uses it. */
@NullMarked
package org.espalier.film.ui;

import org.jspecify.annotations.NullMarked;
