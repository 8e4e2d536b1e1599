package org.espalier;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** What the page on security says of tests is true of the tests that are there. */
class SecurityRowsTests {

    /** OWASP ASVS 5.0.0 has 70 rows of level 1 and 183 of level 2. */
    private static final int ROWS_OF_LEVEL_1 = 70;

    private static final int ROWS_OF_LEVEL_2 = 183;

    private static final Pattern ROW =
            Pattern.compile("\\| (V\\d+\\.\\d+\\.\\d+) \\| ([12]) \\| ([a-z ]+) \\| (.+) \\|");
    private static final Pattern TEST = Pattern.compile("`(\\w+Tests)`");
    private static final Set<String> STATES = Set.of("met", "by setting", "by rule", "no such thing", "accepted");

    private static List<java.util.regex.MatchResult> rows() throws IOException {
        return ROW.matcher(Files.readString(Path.of("docs/security.md")))
                .results()
                .toList();
    }

    @Test
    void everyRowOfBothLevelsIsThereOnceWithItsState() throws IOException {
        var rows = rows();
        assertThat(rows).extracting(row -> row.group(1)).doesNotHaveDuplicates();
        assertThat(rows).filteredOn(row -> row.group(2).equals("1")).hasSize(ROWS_OF_LEVEL_1);
        assertThat(rows).filteredOn(row -> row.group(2).equals("2")).hasSize(ROWS_OF_LEVEL_2);
        assertThat(rows).extracting(row -> row.group(3)).isSubsetOf(STATES);
    }

    @Test
    void theSummaryCountsTheRowsAsTheyStand() throws IOException {
        var text = Files.readString(Path.of("docs/security.md"));
        var counts = rows().stream().collect(Collectors.groupingBy(row -> row.group(3), Collectors.counting()));
        assertThat(text)
                .contains("%d met, %d by a setting of the operator, %d by a rule people keep, %d about what this"
                        .formatted(
                                counts.get("met"),
                                counts.get("by setting"),
                                counts.get("by rule"),
                                counts.get("no such thing")))
                .contains("program does not have, %d accepted with its reason".formatted(counts.get("accepted")));
    }

    @Test
    void everyTestThatIsNamedExists() throws IOException {
        var named = TEST.matcher(Files.readString(Path.of("docs/security.md")))
                .results()
                .map(found -> found.group(1) + ".java")
                .collect(Collectors.toSet());
        try (var files = Files.walk(Path.of("src/test/java"))) {
            assertThat(files.map(file -> file.getFileName().toString())).containsAll(named);
        }
    }
}
