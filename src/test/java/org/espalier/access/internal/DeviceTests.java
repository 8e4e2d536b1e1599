package org.espalier.access.internal;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DeviceTests {

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Mozilla/5.0 (X11; Linux x86_64; rv:140.0) Gecko/20100101 Fern/140.0 | Fern, Linux x86_64",
                "Mozilla/5.0 (Windows NT 10.0; Win64; x64) AppleWebKit/537.36 (KHTML, like Gecko) Moss/140.0"
                        + " Safari/537.36 | Moss, Windows NT 10.0",
                "Mozilla/5.0 (Linux; Android 14; K) AppleWebKit/537.36 (KHTML, like Gecko) Moss/140.0 Ivy/1.2 | Ivy,"
                        + " Android 14",
                "Mozilla/5.0 (Tablet; CPU OS 17) AppleWebKit/605.1.15 (KHTML, like Gecko) Version/17.0 Safari/604.1"
                        + " | Safari, Tablet",
                "curl-like/8.0 | curl-like",
                "nonsense | ?"
            })
    void namesBrowserAndSystemAsTheBrowserDoes(String agent, String words) {
        assertThat(Device.of(agent)).isEqualTo(words);
    }

    @Test
    void saysNothingOfWhatSaysNothingAndCutsWhatIsTooLong() {
        assertThat(Device.of(null)).isEqualTo(Device.UNKNOWN);
        assertThat(Device.of("")).isEqualTo(Device.UNKNOWN);
        assertThat(Device.of("Fern/1 (" + "<b>x".repeat(500) + ")"))
                .hasSizeLessThanOrEqualTo(60)
                .doesNotContain("<");
    }
}
