/** The screens of the stock. */
@NullMarked
package org.espalier.stock.ui;

import org.jspecify.annotations.NullMarked;
