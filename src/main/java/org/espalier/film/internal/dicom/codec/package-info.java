/**
 * Decoders of compressed pictures. They know code streams, not files: each is told the shape the picture must have and
 * refuses a stream of another shape before it allocates anything.
 */
@NullMarked
package org.espalier.film.internal.dicom.codec;

import org.jspecify.annotations.NullMarked;
