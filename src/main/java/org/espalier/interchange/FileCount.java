package org.espalier.interchange;

import org.espalier.kit.Texts;

/**
 * What became of the rows of one file.
 *
 * @param bad rows that are not taken
 */
public record FileCount(ClinicFile file, int fresh, int known, int changed, int bad) {

    static FileCount none(ClinicFile file) {
        return new FileCount(file, 0, 0, 0, 0);
    }

    FileCount plus(Effect effect, int rows) {
        return switch (effect) {
            case NEW -> new FileCount(file, fresh + rows, known, changed, bad);
            case KNOWN -> new FileCount(file, fresh, known + rows, changed, bad);
            case CHANGED -> new FileCount(file, fresh, known, changed + rows, bad);
        };
    }

    FileCount plusBad(int rows) {
        return new FileCount(file, fresh, known, changed, bad + rows);
    }

    public int rows() {
        return fresh + known + changed + bad;
    }

    /** In words, for a terminal: {@code children.csv: 3 new, 2 known, 0 changed, 1 bad}. */
    String asText() {
        return Texts.text("interchange.count", file.fileName(), fresh, known, changed, bad);
    }
}
