/** The screens of visits and recall. Nothing outside this package uses them. */
@NullMarked
package org.espalier.followup.ui;

import org.jspecify.annotations.NullMarked;
