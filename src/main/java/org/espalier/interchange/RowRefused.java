package org.espalier.interchange;

/** A row that cannot be taken, with the column that is to be mended and why. */
final class RowRefused extends RuntimeException {

    private static final long serialVersionUID = 1;

    private final String column;

    RowRefused(String column, String reason) {
        super(reason);
        this.column = column;
    }

    String column() {
        return column;
    }

    String reason() {
        return String.valueOf(getMessage());
    }
}
