/** The screens of costs: tariffs, charges, episodes, pathways, budget. No name of a child is on any of them. */
@NullMarked
package org.espalier.cost.ui;

import org.jspecify.annotations.NullMarked;
