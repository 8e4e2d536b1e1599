/**
 * Films in the DICOM file format: a strict reader of Part 10 files, decoders of pixel data, the way from stored values
 * to light and dark, and the spacing of pixels. It takes every file for hostile: nothing is allocated because a file
 * says so, and whatever cannot be read is refused with a reason.
 */
@NullMarked
package org.espalier.film.internal.dicom;

import org.jspecify.annotations.NullMarked;
