package org.espalier.followup;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.espalier.followup.DoomedTransfer.Death;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A house that is killed while a child passes to another hospital: finished or not begun, and never without an owner. */
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
        assertThat(run(death)).as(death.name()).isEqualTo(DoomedTransfer.KILLED);
        return said(death);
    }

    private int run(Death death) throws IOException, InterruptedException {
        var process = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "--enable-native-access=ALL-UNNAMED",
                        "-Xmx768m",
                        "-cp",
                        System.getProperty("java.class.path"),
                        DoomedTransfer.class.getName(),
                        folder.toString(),
                        death.name())
                .redirectErrorStream(true)
                .redirectOutput(folder.resolve(death + ".log").toFile())
                .start();
        assertThat(process.waitFor(180, TimeUnit.SECONDS))
                .as(death + " took too long")
                .isTrue();
        return process.exitValue();
    }

    private List<String> said(Death death) throws IOException {
        return Files.readAllLines(folder.resolve(death + ".said"));
    }
}
