package org.espalier.science.planning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.espalier.science.quantity.Angle;
import org.espalier.science.quantity.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WedgeTests {

    /** By hand; last printed digit. */
    @ParameterizedTest
    @CsvSource({
        "40,10,6.981,6.972,7.053,6.999",
        "45,10,7.854,7.844,7.935,7.874",
        "50,10,8.727,8.716,8.816,8.749",
        "50,15,13.090,13.053,13.397,13.165",
        "50,20,17.453,17.365,18.199,17.633",
        "60,10,10.472,10.459,10.580,10.499",
        "70,10,12.217,12.202,12.343,12.248",
        "70,15,18.326,18.274,18.756,18.431"
    })
    void namesItsFormula(double width, double degrees, double arc, double chord, double triangle, double isosceles) {
        assertThat(base(Wedge.ARC, width, degrees)).isCloseTo(arc, within(1e-3));
        assertThat(base(Wedge.CHORD, width, degrees)).isCloseTo(chord, within(1e-3));
        assertThat(base(Wedge.RIGHT_TRIANGLE, width, degrees)).isCloseTo(triangle, within(1e-3));
        assertThat(base(Wedge.ISOSCELES, width, degrees)).isCloseTo(isosceles, within(1e-3));
    }

    @ParameterizedTest
    @CsvSource({"40,14.362", "45,12.759", "50,11.478", "57.2958,10.013", "60,9.560", "70,8.192"})
    void turnsByTheOpening(double width, double degrees) {
        assertThat(Wedge.angleOfOpening(new Length(width), new Length(10)).degrees())
                .isCloseTo(degrees, within(1e-3));
    }

    /** A millimetre taken for a degree: right over 57.3 mm, 27 to 44 % too far over a child's 40 to 45 mm. */
    @ParameterizedTest
    @CsvSource({"57.2958,0.1", "45,27.6", "40,43.6"})
    void turnsFurtherThanAMillimetreADegree(double width, double tooFarPercent) {
        double turned = Wedge.angleOfOpening(new Length(width), new Length(10)).degrees();
        assertThat(100 * (turned - 10) / 10).isCloseTo(tooFarPercent, within(0.1));
    }

    /**
     * A handbook's drawing: width 40 mm, base 8 mm (online-elib.jp ID0613), 11.310 degrees with one face square to the
     * base.
     */
    @Test
    void agreesWithAHandbookFigure() {
        assertThat(base(Wedge.RIGHT_TRIANGLE, 40, 11.310)).isCloseTo(8, within(1e-3));
    }

    @Test
    void changesTheLengthAtTheMiddle() {
        assertThat(Wedge.changeAtMiddle(new Length(50), Angle.ofDegrees(10)).millimetres())
                .isCloseTo(4.408, within(1e-3));
    }

    @Test
    void refusesWhatIsNoWedge() {
        assertThatIllegalArgumentException().isThrownBy(() -> base(Wedge.ARC, 0, 10));
        assertThatIllegalArgumentException().isThrownBy(() -> base(Wedge.ARC, 40, -1));
        assertThatIllegalArgumentException().isThrownBy(() -> base(Wedge.ARC, 40, 61));
        assertThatIllegalArgumentException().isThrownBy(() -> Wedge.angleOfOpening(new Length(40), new Length(41)));
    }

    private static double base(Wedge formula, double width, double degrees) {
        return formula.base(new Length(width), Angle.ofDegrees(degrees)).millimetres();
    }
}
