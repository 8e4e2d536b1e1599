/**
 * Clips rewritten without what stands beside their picture. It goes by a list of what stays, like the copies of films,
 * and in place, so that no offset in the file has to be worked out anew.
 */
@NullMarked
package org.espalier.film.internal.clip;

import org.jspecify.annotations.NullMarked;
