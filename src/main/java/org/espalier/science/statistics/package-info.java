/**
 * Distributions that printed tables are written in, and how far readings agree. Nothing here knows what is being
 * measured.
 */
@NamedInterface("statistics")
@NullMarked
package org.espalier.science.statistics;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
