package org.espalier.film;

import org.espalier.platform.BlobRef;

/**
 * A copy of a film that does not tell whose it is.
 *
 * @param bytes a DICOM file of its own, in the film folder
 * @param size pixels across and down
 * @param scale what a pixel measures, as the film said
 * @param covered how many rectangles were made black
 */
public record FilmCopy(BlobRef bytes, Film.Size size, FilmScale scale, int covered) {}
