/** The course screen. Nothing of it is seen by other modules. */
@NullMarked
package org.espalier.course.ui;

import org.jspecify.annotations.NullMarked;
