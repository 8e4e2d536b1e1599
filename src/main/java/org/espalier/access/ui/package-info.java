/** The screens of the network's operator and of a site's privacy officer. Nothing outside this package uses them. */
@NullMarked
package org.espalier.access.ui;

import org.jspecify.annotations.NullMarked;
