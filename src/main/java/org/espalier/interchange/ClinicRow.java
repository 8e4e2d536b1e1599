package org.espalier.interchange;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * One row of a clinic's file, its cells to be read as what they mean.
 *
 * @param line in which it ends, counted from 1
 */
record ClinicRow(ClinicFile file, long line, Cells cells) {

    String text(String column) {
        return cells.text(column);
    }

    @Nullable
    String textOrNull(String column) {
        return cells.isEmpty(column) ? null : cells.text(column);
    }

    /** The day in a cell that may be empty; what is no day is refused. */
    @Nullable
    LocalDate dateOrNull(String column) {
        return cells.isEmpty(column) ? null : cells.date(column).orElse(null);
    }
}
