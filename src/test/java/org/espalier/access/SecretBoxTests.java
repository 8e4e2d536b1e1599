package org.espalier.access;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SecretBoxTests {

    private static final StaffId OWNER = new StaffId(UUID.randomUUID());
    private static final byte[] SECRET = {1, 2, 3, 4, 5};

    @TempDir
    Path data;

    @Test
    void opensWithTheSameKeyAndForTheSamePersonAlone() throws IOException {
        var box = new SecretBox("", "", data);
        var closed = box.close(OWNER, SECRET);
        assertThat(new SecretBox("", "", data).open(OWNER, closed)).isEqualTo(SECRET);
        assertThatThrownBy(() -> box.open(new StaffId(UUID.randomUUID()), closed))
                .isInstanceOf(IllegalStateException.class);
        var other = new SecretBox("", "", data.resolve("other"));
        assertThatThrownBy(() -> other.open(OWNER, closed)).isInstanceOf(IllegalStateException.class);
    }

    @Test
    void closesTheSameSecretDifferentlyEachTimeAndNoticesAChangedByte() throws IOException {
        var box = new SecretBox("", "", data);
        var closed = box.close(OWNER, SECRET);
        assertThat(box.close(OWNER, SECRET)).isNotEqualTo(closed);
        closed[closed.length - 1] ^= 1;
        assertThatThrownBy(() -> box.open(OWNER, closed)).isInstanceOf(IllegalStateException.class);
    }

    @Test
    void keepsTheKeyItMadeForItsOwnerAlone() throws IOException {
        new SecretBox("", "", data);
        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(data.resolve("second-factor.key"))))
                .isEqualTo("rw-------");
    }

    @Test
    void takesTheKeyFromAFileAndRefusesAShortOneWithoutShowingIt() throws IOException {
        var named = data.resolve("key");
        new SecretBox("", "", data);
        Files.copy(data.resolve("second-factor.key"), named);
        var closed = new SecretBox("", named.toString(), data.resolve("unused")).close(OWNER, SECRET);
        assertThat(new SecretBox("", "", data).open(OWNER, closed)).isEqualTo(SECRET);
        assertThatThrownBy(() -> new SecretBox("c2hvcnQ=", "", data))
                .hasMessageContaining("32 random bytes")
                .hasMessageNotContaining("c2hvcnQ=");
    }
}
