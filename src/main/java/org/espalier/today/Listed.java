package org.espalier.today;

import java.util.List;

/**
 * The first of what waits, in the order in which it should be done.
 *
 * @param all how many there are, those that are not shown too
 */
public record Listed<T>(List<T> shown, long all) {

    public Listed {
        shown = List.copyOf(shown);
    }

    public boolean isEmpty() {
        return shown.isEmpty();
    }

    /** How many are not shown. */
    public long further() {
        return all - shown.size();
    }
}
