/**
 * The film room: one film in the dark, its landmarks, numbers and signature. Nothing of it is seen by other modules.
 */
@NullMarked
package org.espalier.reading.ui;

import org.jspecify.annotations.NullMarked;
