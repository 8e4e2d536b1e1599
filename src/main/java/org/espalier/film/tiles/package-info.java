/**
 * Pictures cut into tiles at every halving of their size, kept in one file with all grey levels, and any region of them
 * drawn through a window in milliseconds. Knows nothing of films, children or DICOM.
 */
@NamedInterface("tiles")
@NullMarked
package org.espalier.film.tiles;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
