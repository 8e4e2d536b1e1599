/**
 * What stands in the codes on labels: GS1 element strings and HIBC supplier labels, read and checked by their own
 * published rules, and every code that breaks one explained. It knows of no catalogue and no shelf.
 */
@NamedInterface("code")
@NullMarked
package org.espalier.stock.code;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
