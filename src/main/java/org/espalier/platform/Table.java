package org.espalier.platform;

import java.util.List;

/** A table and the columns of it that are stored as they came, not computed. */
record Table(String name, List<String> columns) {

    String copyOut() {
        return "copy (select " + quotedColumns() + " from espalier." + quote(name) + ") to stdout (format binary)";
    }

    String copyIn() {
        return "copy espalier." + quote(name) + " (" + quotedColumns() + ") from stdin (format binary)";
    }

    private String quotedColumns() {
        return String.join(", ", columns.stream().map(Table::quote).toList());
    }

    private static String quote(String name) {
        return '"' + name.replace("\"", "\"\"") + '"';
    }
}
