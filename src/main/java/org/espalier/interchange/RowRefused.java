package org.espalier.interchange;

import java.util.Arrays;

/** A row that cannot be taken, with the column that is to be mended and why. */
final class RowRefused extends RuntimeException {

    private static final long serialVersionUID = 1;

    private final String column;
    private final FileReason reason;
    private final transient Object[] details;

    RowRefused(String column, FileReason reason, Object... details) {
        super(reason + " " + column);
        this.column = column;
        this.reason = reason;
        this.details = Arrays.copyOf(details, details.length);
    }

    String column() {
        return column;
    }

    FileReason reason() {
        return reason;
    }

    Object[] details() {
        return Arrays.copyOf(details, details.length);
    }
}
