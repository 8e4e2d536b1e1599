/** The screens about who a child is and what is measured on it. Nothing outside this package uses them. */
@NullMarked
package org.espalier.patient.ui;

import org.jspecify.annotations.NullMarked;
