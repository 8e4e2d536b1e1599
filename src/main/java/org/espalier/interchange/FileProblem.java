package org.espalier.interchange;

import java.util.List;
import java.util.stream.Stream;
import org.espalier.kit.Texts;

/**
 * What is wrong at one place of a file.
 *
 * @param file the file as it was named
 * @param line its line, counted from 1
 * @param column the column's name
 * @param reason what is wrong
 * @param details what the reason speaks of, as it stands in the file or on record
 */
public record FileProblem(String file, long line, String column, FileReason reason, List<String> details) {

    /** The column of what is wrong with a row as a whole. */
    static final String WHOLE_ROW = "?";

    public FileProblem {
        details = List.copyOf(details);
    }

    static FileProblem of(String file, long line, String column, FileReason reason, Object... details) {
        return new FileProblem(
                file,
                line,
                column,
                reason,
                Stream.of(details).map(String::valueOf).toList());
    }

    /** Whether no single column is to blame. */
    public boolean isOfWholeRow() {
        return column.equals(WHOLE_ROW);
    }

    /** What is wrong and what is meant to stand there, in the reader's language. */
    public String why() {
        return Texts.text(reason, details.toArray());
    }

    /** In words, for a terminal. */
    String asText() {
        return Texts.text("interchange.problem", file, Long.toString(line), column, why());
    }
}
