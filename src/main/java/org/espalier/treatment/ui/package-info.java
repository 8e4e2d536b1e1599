/** The screens of treatment. They decide nothing: what may be recorded and what follows from it is the module's. */
@NullMarked
package org.espalier.treatment.ui;

import org.jspecify.annotations.NullMarked;
