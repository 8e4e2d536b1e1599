/** Screens of opinions: what is asked of me, asking, a thread with its films, reading a film blind, panels. */
@NullMarked
package org.espalier.opinion.ui;

import org.jspecify.annotations.NullMarked;
