package org.espalier.interchange;

import java.util.List;

/**
 * What came of reading a clinic's records, or would come of it.
 *
 * @param counts of the files that are there, in the order they are taken
 * @param problems every row that is bad and why, file by file, by line
 * @param taken whether anything was kept
 */
public record ImportReport(List<FileCount> counts, List<FileProblem> problems, boolean taken) {

    public ImportReport {
        counts = List.copyOf(counts);
        problems = List.copyOf(problems);
    }

    /** Whether there is nothing to mend. */
    public boolean isGood() {
        return problems.isEmpty();
    }

    /** Whether something of it is new or changes what is on record. */
    public boolean bringsSomething() {
        return counts.stream().anyMatch(count -> count.fresh() + count.changed() > 0);
    }

    ImportReport asTaken() {
        return new ImportReport(counts, problems, true);
    }
}
