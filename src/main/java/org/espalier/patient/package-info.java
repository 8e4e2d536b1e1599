/**
 * Children: who they are, where they are cared for, their limbs and physes, and what is measured and found on them over
 * time. Identity stands apart; every look at a child's record is written down.
 */
@ApplicationModule(allowedDependencies = {"access", "kit", "platform", "science::quantity", "science::growth"})
@NullMarked
package org.espalier.patient;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
