package org.espalier.science.planning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.espalier.science.quantity.Angle;
import org.espalier.science.quantity.Length;
import org.junit.jupiter.api.Test;

class DomeTests {

    /** By hand: r 30, w 36 is the triangle 30, 18, 24; θ = 0.1 radian slides 3 mm of an arc of 2 · 0.6435. */
    @Test
    void tellsItsNumbers() {
        var dome = new Dome(new Length(30), new Length(36));
        var turn = Angle.ofRadians(-0.1);
        assertThat(dome.depth().millimetres()).isCloseTo(6, within(1e-9));
        assertThat(dome.slide(turn).millimetres()).isCloseTo(3, within(1e-9));
        assertThat(dome.arc().toRadians()).isCloseTo(1.2870022, within(1e-7));
        assertThat(dome.contact(turn)).isCloseTo(0.9223000, within(1e-6));
        assertThat(dome.contact(Angle.ofDegrees(80))).isZero();
    }

    @Test
    void isAHalfCircleAtLeast() {
        assertThat(new Dome(new Length(20), new Length(40)).depth().millimetres())
                .isCloseTo(20, within(1e-9));
        assertThatIllegalArgumentException().isThrownBy(() -> new Dome(new Length(19), new Length(40)));
        assertThatIllegalArgumentException().isThrownBy(() -> new Dome(new Length(19), new Length(0)));
    }

    /** Of points evenly along the arc, those still met by the turned arc are as many as the formula says. */
    @Property(tries = 50)
    void meetsAsMuchOfTheArcAsCounted(
            @ForAll @DoubleRange(min = 25, max = 90) double radius,
            @ForAll @DoubleRange(min = 0, max = 30) double turn) {
        var dome = new Dome(new Length(radius), new Length(45));
        double half = dome.arc().toRadians() / 2;
        int met = 0;
        int all = 20_000;
        for (int i = 0; i < all; i++) {
            double at = -half + 2 * half * (i + 0.5) / all;
            if (Math.abs(at - Math.toRadians(turn)) <= half) {
                met++;
            }
        }
        assertThat(dome.contact(Angle.ofDegrees(turn))).isCloseTo((double) met / all, within(1e-3));
    }
}
