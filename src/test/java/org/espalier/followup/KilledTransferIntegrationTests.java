package org.espalier.followup;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.espalier.DoomedProcess;
import org.espalier.followup.DoomedTransfer.Death;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A house that is killed while a child passes to another hospital: finished or not begun, and never without an owner.
 */
class KilledTransferIntegrationTests {

    @TempDir
    Path folder;

    @Test
    void aChildIsAlwaysSomebodysWithAnOpenVisit() throws Exception {
        assertThat(dies(Death.ASKED)).isEmpty();
        var notBegun = "old hospital, transfer ASKED, open visits there 1, rows elsewhere 0";
        assertThat(dies(Death.ACCEPTED_NOT_YET_COMMITTED)).containsExactly(notBegun);
        assertThat(dies(Death.ACCEPTED_COMMITTED))
                .as("what was not committed was not begun")
                .containsExactly(notBegun);
        assertThat(run(Death.NOWHERE)).isZero();
        assertThat(said(Death.NOWHERE))
                .containsExactly("new hospital, transfer ACCEPTED, open visits there 1, rows elsewhere 0", "alive");
    }

    private List<String> dies(Death death) throws Exception {
        assertThat(run(death)).as(death.name()).isEqualTo(DoomedProcess.KILLED);
        return said(death);
    }

    private int run(Death death) throws Exception {
        return DoomedProcess.run(DoomedTransfer.class, folder, death);
    }

    private List<String> said(Death death) throws Exception {
        return DoomedProcess.said(folder, death);
    }
}
