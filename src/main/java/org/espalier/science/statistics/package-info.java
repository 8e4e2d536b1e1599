/**
 * Distributions that printed tables are written in, how far readings agree, and what results of groups tell. Nothing
 * here knows what is being measured.
 */
@NamedInterface("statistics")
@NullMarked
package org.espalier.science.statistics;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
