package org.espalier.interchange;

/**
 * What is wrong at one place of a file.
 *
 * @param file the file as it was named
 * @param line its line, counted from 1
 * @param column the column's name
 * @param reason what is wrong, in words, and what is meant to stand there
 */
public record FileProblem(String file, long line, String column, String reason) {

    /** Whether no single column is to blame. */
    public boolean isOfWholeRow() {
        return column.equals("?");
    }

    String asText() {
        return file + ", line " + line + ", column " + column + ": " + reason;
    }
}
