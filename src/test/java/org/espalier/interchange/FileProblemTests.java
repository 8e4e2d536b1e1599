package org.espalier.interchange;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class FileProblemTests {

    @ParameterizedTest
    @EnumSource(FileReason.class)
    void everyReasonIsSaidInWordsWithWhatItSpeaksOf(FileReason reason) {
        var problem = FileProblem.of("visits.csv", 1234, "date", reason, "one", 5678, "three");
        assertThat(problem.asText())
                .startsWith("visits.csv, line 1234, column date: ")
                .doesNotContain("{", "}")
                .hasSizeGreaterThan("visits.csv, line 1234, column date: ".length() + 2);
    }
}
