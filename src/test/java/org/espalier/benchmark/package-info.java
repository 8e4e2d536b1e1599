/** Speed, each figure beside a reference taken in the same run. Run by {@code ./espalier bench}. */
@NullMarked
package org.espalier.benchmark;

import org.jspecify.annotations.NullMarked;
