/** The course on paper: two pages drawn from the same model as the screen. Nothing outside the module uses it. */
@NullMarked
package org.espalier.course.internal;

import org.jspecify.annotations.NullMarked;
