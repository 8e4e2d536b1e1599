package org.espalier.opinion;

import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.espalier.access.StaffId;
import org.jspecify.annotations.Nullable;

/**
 * Who is asked, and until when.
 *
 * @param panel whose members are asked besides; null for none
 * @param everybody whether any surgeon of the network may take it up
 * @param until the last day of every grant
 */
public record Invitation(List<StaffId> colleagues, @Nullable UUID panel, boolean everybody, LocalDate until) {

    public Invitation {
        colleagues = colleagues.stream().distinct().toList();
    }
}
