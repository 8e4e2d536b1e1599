package org.espalier.plan;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.espalier.access.StaffId;
import org.espalier.science.quantity.Side;

/**
 * Options of a limb as they were shown on a day, with what the surgeon meant and expected. It is never changed.
 *
 * @param options those that stood in the table, as worded then
 * @param by name of who kept it
 */
public record SavedComparison(
        ComparisonId id,
        Side side,
        LocalDate on,
        Optional<Intent> intent,
        List<OptionCells> options,
        Optional<StaffId> staff,
        String by,
        Instant at) {

    public SavedComparison {
        options = List.copyOf(options);
    }
}
