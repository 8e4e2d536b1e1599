/** Costs as files: sheets of rows, written as CSV or as a workbook. */
@NullMarked
package org.espalier.cost.internal;

import org.jspecify.annotations.NullMarked;
