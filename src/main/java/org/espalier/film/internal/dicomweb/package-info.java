/**
 * DICOMweb (PS3.18) for the archive of one site: films come in by STOW-RS through the one door, and are found and
 * fetched by QIDO-RS and WADO-RS as they were received. The caller's token says which site; nothing of another is
 * there.
 */
@NullMarked
package org.espalier.film.internal.dicomweb;

import org.jspecify.annotations.NullMarked;
