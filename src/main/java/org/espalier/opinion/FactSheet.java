package org.espalier.opinion;

import java.util.List;

/** A fact in words, as it was when it was frozen: no day, no name. */
public record FactSheet(String heading, List<Line> lines) {

    /** A name and its value, with unit and direction. */
    public record Line(String name, String value) {}

    public FactSheet {
        lines = List.copyOf(lines);
    }
}
