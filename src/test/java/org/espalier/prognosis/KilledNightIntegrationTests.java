package org.espalier.prognosis;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.espalier.NightCutShort;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A house that is killed amid its night's forecasts: finished by itself at the next start, nothing twice. */
class KilledNightIntegrationTests {

    @TempDir
    Path folder;

    @Test
    void aNightCutShortIsFinishedAtTheNextStart() throws Exception {
        assertThat(NightCutShort.of(DoomedNight.class, folder))
                .containsExactly(
                        "found amid, unfinished",
                        "left " + DoomedNight.CHILDREN + ", finished",
                        "marked " + DoomedNight.CHILDREN + ", forecasts 2");
    }
}
