/** The screen that brings a clinic's own records in. It shows and asks; what is taken is decided by the module. */
@NullMarked
package org.espalier.interchange.ui;

import org.jspecify.annotations.NullMarked;
