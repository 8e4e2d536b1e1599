package org.espalier.prognosis;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.espalier.DoomedProcess;
import org.espalier.prognosis.DoomedNight.Life;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A house that is killed amid its night's forecasts: finished by itself at the next start, nothing twice. */
class KilledNightIntegrationTests {

    @TempDir
    Path folder;

    @Test
    void aNightCutShortIsFinishedAtTheNextStart() throws Exception {
        assertThat(run(Life.KILLED_AMID_THE_NIGHT)).isEqualTo(DoomedProcess.KILLED);
        assertThat(run(Life.THE_NEXT_START)).isZero();
        assertThat(said(Life.THE_NEXT_START))
                .containsExactly(
                        "found amid, unfinished",
                        "left " + DoomedNight.CHILDREN + ", finished",
                        "marked " + DoomedNight.CHILDREN + ", forecasts 2");
    }

    private int run(Life life) throws Exception {
        return DoomedProcess.run(DoomedNight.class, folder, life);
    }

    private List<String> said(Life life) throws Exception {
        return DoomedProcess.said(folder, life);
    }
}
