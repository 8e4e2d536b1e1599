package org.espalier.access.internal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.espalier.access.internal.Allowance.Answer.GRANTED;
import static org.espalier.access.internal.Allowance.Answer.RAN_OUT;
import static org.espalier.access.internal.Allowance.Answer.REFUSED;

import java.time.Instant;
import org.junit.jupiter.api.Test;

class AllowanceTests {

    private static final Instant NOON = Instant.parse("2026-03-02T12:00:00Z");

    @Test
    void isUsedUpAndFillsAgainAtItsPaceUpToTheBrim() {
        var allowance = new Allowance(10, 20, NOON);
        for (int asked = 0; asked < 20; asked++) {
            assertThat(allowance.take(1, NOON)).isEqualTo(GRANTED);
        }
        assertThat(allowance.take(1, NOON)).isEqualTo(RAN_OUT);
        assertThat(allowance.take(1, NOON)).isEqualTo(REFUSED);
        assertThat(allowance.take(5, NOON.plusMillis(400))).isEqualTo(REFUSED);
        assertThat(allowance.take(5, NOON.plusMillis(500))).isEqualTo(GRANTED);
        assertThat(allowance.take(21, NOON.plusSeconds(3600))).isEqualTo(REFUSED);
        assertThat(allowance.take(20, NOON.plusSeconds(3600))).isEqualTo(GRANTED);
    }

    @Test
    void saysThatItRanOutOnceUntilThereWasPlentyAgain() {
        var allowance = new Allowance(10, 20, NOON);
        allowance.take(20, NOON);
        assertThat(allowance.take(1, NOON)).isEqualTo(RAN_OUT);
        assertThat(allowance.take(1, NOON.plusMillis(100))).isEqualTo(GRANTED);
        assertThat(allowance.take(1, NOON.plusMillis(100))).isEqualTo(REFUSED);
        assertThat(allowance.take(1, NOON.plusSeconds(3))).isEqualTo(GRANTED);
        assertThat(allowance.take(19, NOON.plusSeconds(3))).isEqualTo(GRANTED);
        assertThat(allowance.take(1, NOON.plusSeconds(3))).isEqualTo(RAN_OUT);
    }

    @Test
    void isNotFilledByAClockThatWentBack() {
        var allowance = new Allowance(10, 20, NOON);
        allowance.take(20, NOON);
        assertThat(allowance.take(1, NOON.minusSeconds(60))).isEqualTo(RAN_OUT);
        assertThat(allowance.take(1, NOON)).isEqualTo(REFUSED);
    }
}
