package org.espalier.film.internal.dicom;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Spoiled films in a Java machine of 512 MiB: each is read or refused, none ends or stalls the program. */
class SpoiledFilmsTests {

    private static final String HEAP = "-Xmx512m";

    @TempDir
    Path scratch;

    @Test
    void survivesTwoThousandMutationsOfSmallPictures() throws Exception {
        List<Path> pictures = pictures();
        int each = 2000 / pictures.size() + 1;
        assertThat(run(each, pictures)).matches("decoded [1-9]\\d*, refused [1-9]\\d*");
    }

    @Test
    void survivesMutationsOfRealFilms() throws Exception {
        List<Path> films = new ArrayList<>(Fixtures.files("films"));
        films.addAll(Fixtures.files("calibration"));
        assertThat(run(5, films)).matches("decoded [1-9]\\d*, refused [1-9]\\d*");
    }

    @Test
    void readsOrRefusesEveryMalformedFilm() throws Exception {
        List<Path> films = Fixtures.files("malformed");
        assertThat(films).hasSize(19);
        assertThat(run(0, films)).isEqualTo("decoded 1, refused 18");
    }

    private static List<Path> pictures() throws IOException, URISyntaxException {
        Path folder = Path.of(Objects.requireNonNull(SpoiledFilmsTests.class.getResource("encodings"))
                .toURI());
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(file -> file.toString().endsWith(".dcm"))
                    .sorted()
                    .toList();
        }
    }

    private String run(int mutations, List<Path> films) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                HEAP,
                "-cp",
                System.getProperty("java.class.path"),
                HostileFilms.class.getName(),
                Integer.toString(mutations)));
        films.forEach(film -> command.add(film.toString()));
        Path log = scratch.resolve("log");
        Process process = new ProcessBuilder(command)
                .redirectErrorStream(true)
                .redirectOutput(log.toFile())
                .start();
        boolean ended = process.waitFor(5, TimeUnit.MINUTES);
        process.destroyForcibly();
        assertThat(ended).as("ended in time").isTrue();
        assertThat(process.exitValue()).as(Files.readString(log)).isZero();
        return Files.readString(log).strip();
    }
}
