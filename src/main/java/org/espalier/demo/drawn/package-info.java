/**
 * Draws standing films of both legs from known geometry, as DICOM files that say they are drawn. Pure: no Spring, no
 * database, the same order always gives the same film.
 */
@NamedInterface("drawn")
@NullMarked
package org.espalier.demo.drawn;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
