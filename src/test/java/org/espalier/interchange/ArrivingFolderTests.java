package org.espalier.interchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;

class ArrivingFolderTests {

    @Test
    void sortsTablesAndFilms() throws IOException {
        try (var arriving = ArrivingFolder.open()) {
            arriving.add("children.csv", bytes("a"));
            arriving.add("one.dcm", bytes("b"));
            arriving.add("children.csv", bytes("c"));
            assertThat(arriving.tables()).containsExactly(ClinicFile.CHILDREN);
            assertThat(arriving.films()).isEqualTo(1);
            assertThat(arriving.folder().table(ClinicFile.CHILDREN))
                    .hasValueSatisfying(now ->
                            assertThat(now).asString(StandardCharsets.UTF_8).isEqualTo("c"));
            assertThat(arriving.folder().film("films/one.dcm")).isPresent();
        }
    }

    @Test
    void letsNothingOutOfItsFolder() throws IOException {
        var packed = new ByteArrayOutputStream();
        try (var zip = new ZipOutputStream(packed)) {
            zip.putNextEntry(new ZipEntry("../../outside.dcm"));
            zip.write(1);
        }
        try (var arriving = ArrivingFolder.open()) {
            arriving.add("records.zip", new ByteArrayInputStream(packed.toByteArray()));
            var root = arriving.folder().root();
            assertThat(root.resolve("films/outside.dcm")).exists();
            assertThat(root.resolve("../../outside.dcm").normalize()).doesNotExist();
            assertThatThrownBy(() -> arriving.add("..", bytes("a"))).isInstanceOf(IOException.class);
            assertThat(arriving.folder().film("films/../../outside.dcm")).isEmpty();
        }
    }

    @Test
    void forgetsAllWhenItIsClosed() throws IOException {
        var arriving = ArrivingFolder.open();
        arriving.add("children.csv", bytes("a"));
        arriving.close();
        assertThat(Files.exists(arriving.folder().root())).isFalse();
    }

    private static InputStream bytes(String text) {
        return new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8));
    }
}
