package org.espalier.film.internal.dicomweb;

import org.espalier.film.OpenFilm;

/** A film that an archive asked for, opened, and how the archive names it. */
record StoredFilm(Instance instance, OpenFilm open) {}
