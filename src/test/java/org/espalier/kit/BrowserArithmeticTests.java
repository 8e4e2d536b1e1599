package org.espalier.kit;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Every number a clinician reads is computed in one place, on the server: the browser does no trigonometry. */
class BrowserArithmeticTests {

    private static final Path FRONTEND = Path.of("frontend");
    private static final Path VIEWPORT = FRONTEND.resolve("film-room/viewport.ts");
    private static final Pattern TRIGONOMETRY =
            Pattern.compile("\\bMath\\s*(\\.|\\[\\s*['\"])\\s*(a?(sin|cos|tan)h?|atan2|hypot)\\b");

    @Test
    void knowsTrigonometryWhenItSeesIt() {
        assertThat(List.of("Math.atan2(y, x)", "Math.acos(z)", "Math['hypot'](x, y)"))
                .allMatch(text -> TRIGONOMETRY.matcher(text).find());
    }

    @Test
    void noSourceButTheViewportTurnsCoordinates() throws IOException {
        try (Stream<Path> files = Files.walk(FRONTEND)) {
            List<Path> sources = files.filter(file -> file.toString().endsWith(".ts"))
                    .filter(file -> !file.startsWith(FRONTEND.resolve("generated")))
                    .toList();
            assertThat(sources).contains(VIEWPORT);
            for (Path source : sources) {
                if (!source.equals(VIEWPORT)) {
                    assertThat(Files.readString(source)).as(source.toString()).doesNotContainPattern(TRIGONOMETRY);
                }
            }
        }
    }
}
