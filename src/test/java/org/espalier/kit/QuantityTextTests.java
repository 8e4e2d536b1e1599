package org.espalier.kit;

import static org.assertj.core.api.Assertions.assertThat;

import org.espalier.science.quantity.Angle;
import org.espalier.science.quantity.Length;
import org.espalier.science.quantity.Side;
import org.espalier.science.quantity.Weight;
import org.junit.jupiter.api.Test;

class QuantityTextTests {

    @Test
    void saysSideAndDirectionOfADeviation() {
        assertThat(QuantityText.ofDeviation(Side.RIGHT, new Angle(7.24))).isEqualTo("Right 7.2° varus");
        assertThat(QuantityText.ofDeviation(Side.LEFT, new Angle(-3.26))).isEqualTo("Left 3.3° valgus");
    }

    @Test
    void callsADeviationThatIsShownAsZeroStraight() {
        assertThat(QuantityText.ofDeviation(Side.LEFT, new Angle(0.04))).isEqualTo("Left 0.0°, straight");
        assertThat(QuantityText.ofDeviation(Side.LEFT, new Angle(-0.04))).isEqualTo("Left 0.0°, straight");
        assertThat(QuantityText.ofDeviation(Side.LEFT, new Angle(-0.05))).isEqualTo("Left 0.1° valgus");
    }

    @Test
    void writesTheUnitOfEveryQuantity() {
        assertThat(QuantityText.of(Side.LEFT, new Angle(87.36))).isEqualTo("Left 87.4°");
        assertThat(QuantityText.of(new Length(342.4))).isEqualTo("342 mm");
        assertThat(QuantityText.ofHeight(Length.ofCentimetres(112.5))).isEqualTo("112.5 cm");
        assertThat(QuantityText.of(Weight.ofKilograms(19.4))).isEqualTo("19.4 kg");
        assertThat(QuantityText.ofIndex(17.249)).isEqualTo("17.2 kg/m²");
    }
}
