package org.espalier.platform;

import java.time.LocalDate;
import java.util.UUID;

/**
 * How far a night's work at one hospital has come.
 *
 * @param day the hospital's day
 * @param after the last that was looked at, by id
 */
public record Night(LocalDate day, UUID after, int looked, int renewed, boolean finished) {

    private static final UUID BEFORE_ALL = new UUID(0, 0);

    static Night begun(LocalDate day) {
        return new Night(day, BEFORE_ALL, 0, 0, false);
    }

    Night with(NightWork.Chunk chunk) {
        return new Night(
                day,
                chunk.looked().isEmpty() ? after : chunk.looked().getLast(),
                looked + chunk.looked().size(),
                renewed + chunk.renewed(),
                chunk.looked().size() < NightWork.CHUNK);
    }
}
