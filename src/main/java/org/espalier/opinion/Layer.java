package org.espalier.opinion;

import java.util.List;

/**
 * What one person drew on a film.
 *
 * @param mine whether it is the caller's own
 */
public record Layer(String name, boolean mine, List<Drawn> drawn) {

    /**
     * Something drawn, and what it measures.
     *
     * @param text the angle with its unit, and the label; may be empty
     */
    public record Drawn(Drawing drawing, String text) {}
}
