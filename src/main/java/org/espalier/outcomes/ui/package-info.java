/** The screens of outcomes: results, forecasts, and the plates behind them. No name of a child is on any of them. */
@NullMarked
package org.espalier.outcomes.ui;

import org.jspecify.annotations.NullMarked;
