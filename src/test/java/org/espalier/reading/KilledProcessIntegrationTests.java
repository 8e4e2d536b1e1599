package org.espalier.reading;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.espalier.DoomedProcess;
import org.espalier.reading.DoomedHouse.Death;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** One house that is killed again and again: nothing acknowledged is lost, nothing is there by half. */
class KilledProcessIntegrationTests {

    private static final String ID = "[0-9a-f-]{36}";

    @TempDir
    Path folder;

    @Test
    void losesNothingItAcknowledgedAndKeepsNothingByHalf() throws Exception {
        dies(Death.FILM_NOT_YET_COMMITTED);

        assertThat(dies(Death.FILM_COMMITTED_NOT_YET_ANSWERED))
                .as("a film whose sender got no answer and whose row never was")
                .containsExactly("waiting 0");

        assertThat(dies(Death.PICTURE_HALF_WRITTEN))
                .as("the committed film was decoded; the next one was acknowledged")
                .hasSize(3)
                .satisfiesExactly(
                        first -> assertThat(first).matches("film " + ID + " READY"),
                        waiting -> assertThat(waiting).isEqualTo("waiting 0"),
                        answer -> assertThat(answer).matches("acknowledged film " + ID));

        var drawn = dies(Death.READING_NOT_YET_COMMITTED);
        assertThat(drawn)
                .as("the film whose picture was half written is whole; a draft was acknowledged")
                .filteredOn(line -> line.matches("film " + ID + " READY"))
                .hasSize(2);
        assertThat(drawn).endsWith("acknowledged draft");

        assertThat(dies(Death.READING_COMMITTED_NOT_YET_ANSWERED))
                .as("the draft outlived the signature that never was")
                .contains("draft of 12")
                .noneMatch(line -> line.startsWith("reading") || line.startsWith("numbers"));

        var last = lives();
        assertThat(last)
                .as("the signature stands once, with its numbers, and the draft is gone; signing again says the same")
                .filteredOn(line -> line.matches("reading " + ID))
                .hasSize(1);
        assertThat(last).contains("numbers true").noneMatch(line -> line.startsWith("draft"));
        assertThat(last).last().asString().startsWith("acknowledged Signed");
        assertThat(halfWrittenFiles()).isEmpty();
    }

    private List<String> dies(Death death) throws Exception {
        int status = run(death);
        assertThat(status)
                .as("exit status of %s, which said %s", death, said(death))
                .isEqualTo(DoomedProcess.KILLED);
        return said(death);
    }

    private List<String> lives() throws Exception {
        assertThat(run(Death.NOWHERE)).isZero();
        return said(Death.NOWHERE);
    }

    private int run(Death death) throws Exception {
        return DoomedProcess.run(DoomedHouse.class, folder, death);
    }

    private List<String> said(Death death) throws IOException {
        return DoomedProcess.said(folder, death);
    }

    private List<Path> halfWrittenFiles() throws IOException {
        try (var files = Files.walk(folder.resolve("data").resolve("pyramids"))) {
            return files.filter(file -> file.getFileName().toString().matches(".*\\.tiles\\..+"))
                    .toList();
        }
    }
}
