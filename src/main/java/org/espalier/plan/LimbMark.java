package org.espalier.plan;

import org.espalier.kit.paper.Markup;
import org.espalier.science.quantity.Side;

/** How a limb is marked in a drawing: right lake, solid and round; left plum, dashed and square. */
record LimbMark(Side side) {

    private static final String RADIUS = "4";
    private static final double HALF_SQUARE = 3.6;

    String colour() {
        return side == Side.RIGHT ? "#1b6f8a" : "#8a3b6e";
    }

    String dashes() {
        return side == Side.RIGHT ? "none" : "5 3";
    }

    /** A point of a series. */
    void at(Markup svg, double x, double y) {
        if (side == Side.RIGHT) {
            svg.svg("circle").with("cx", x).with("cy", y).with("r", RADIUS).with("fill", colour());
        } else {
            svg.svg("rect")
                    .with("x", x - HALF_SQUARE)
                    .with("y", y - HALF_SQUARE)
                    .with("width", 2 * HALF_SQUARE)
                    .with("height", 2 * HALF_SQUARE)
                    .with("fill", colour());
        }
    }

    /** Joins the points of a series. */
    void line(Markup svg, String points) {
        svg.svg("polyline")
                .with("points", points)
                .with("fill", "none")
                .with("stroke", colour())
                .with("stroke-width", "1.5")
                .with("stroke-dasharray", dashes());
    }
}
