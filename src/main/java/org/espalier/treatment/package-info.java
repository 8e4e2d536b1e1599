/**
 * What was done to a child's limbs and what is meant to be done: procedures, plans, targets, implants in place. Facts
 * are added and superseded, never changed; the state of each physis follows from them and is kept nowhere.
 */
@ApplicationModule(
        allowedDependencies = {
            "access",
            "film",
            "kit",
            "patient",
            "platform",
            "reading",
            "science::alignment",
            "science::quantity",
            "stock"
        })
@NullMarked
package org.espalier.treatment;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
