package org.espalier.followup;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.espalier.NightCutShort;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A house that is killed amid its night's recall: finished by itself at the next start, nothing twice. */
class KilledRecallIntegrationTests {

    @TempDir
    Path folder;

    @Test
    void aNightCutShortIsFinishedAtTheNextStart() throws Exception {
        assertThat(NightCutShort.of(DoomedRecall.class, folder))
                .containsExactly(
                        "found amid, unfinished",
                        "left " + DoomedRecall.CHILDREN + ", finished",
                        "open visits " + DoomedRecall.CHILDREN + ", of as many children, harm worked out of all");
    }
}
