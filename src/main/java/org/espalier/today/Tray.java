package org.espalier.today;

/**
 * Films that belong to no child yet.
 *
 * @param unmatched those that can be shown, or soon
 * @param aside those that cannot
 */
public record Tray(long unmatched, long aside) {

    public boolean isEmpty() {
        return unmatched == 0 && aside == 0;
    }
}
