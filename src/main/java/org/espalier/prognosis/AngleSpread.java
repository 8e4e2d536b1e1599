package org.espalier.prognosis;

import org.espalier.science.quantity.Angle;

/**
 * How an angle is spread: middle, half of the chance between {@code low50} and {@code high50}, nine tenths in the outer
 * ones.
 */
public record AngleSpread(Angle low90, Angle low50, Angle middle, Angle high50, Angle high90) {

    /** @param quantiles at 5, 25, 50, 75 and 95 %, in degrees */
    static AngleSpread of(double... quantiles) {
        return new AngleSpread(
                new Angle(quantiles[0]),
                new Angle(quantiles[1]),
                new Angle(quantiles[2]),
                new Angle(quantiles[3]),
                new Angle(quantiles[4]));
    }
}
