package org.espalier.film.internal.dicom;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;

/** General-purpose DICOM programs that decompress a film, where they are installed. */
enum Referee {
    /** dcmtk for the discrete cosine transform and lossless JPEG; colours are left as they are coded. */
    DCMTK_JPEG("dcmdjpeg", "+cn"),
    /** dcmtk for JPEG-LS. */
    DCMTK_JPEG_LS("dcmdjpls"),
    /** pydicom with Pillow and OpenJPEG for JPEG 2000. */
    PYDICOM("/usr/bin/python3", "-c", """
            import sys, pydicom
            film = pydicom.dcmread(sys.argv[1])
            film.decompress('pillow')
            film.save_as(sys.argv[2])
            """);

    private final List<String> command;

    Referee(String... command) {
        this.command = List.of(command);
    }

    /** The film as the program decompresses it; skips the test, saying why, where the program is missing. */
    StoredImage decoded(Path film, Path scratch) throws InterruptedException {
        Path plain = scratch.resolve("plain.dcm");
        List<String> call = new ArrayList<>(command);
        call.addAll(List.of(film.toString(), plain.toString()));
        assumeTrue(run(call, scratch), this + " is not installed here: no referee for " + film.getFileName());
        return Films.decoded(Films.read(plain));
    }

    private static boolean run(List<String> call, Path scratch) throws InterruptedException {
        try {
            Process process = new ProcessBuilder(call)
                    .redirectErrorStream(true)
                    .redirectOutput(scratch.resolve("referee.log").toFile())
                    .start();
            return process.waitFor(60, TimeUnit.SECONDS) && process.exitValue() == 0;
        } catch (IOException e) {
            return false;
        }
    }
}
