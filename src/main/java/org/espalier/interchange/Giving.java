package org.espalier.interchange;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.espalier.access.SiteId;
import org.espalier.patient.Child;
import org.espalier.patient.ChildData;

/**
 * One go at writing a hospital's records.
 *
 * @param children those with a local number, by it
 * @param folder where the files go
 */
record Giving(SiteId site, List<Numbered> children, Path folder) {

    /** A child that can be told by its number. */
    record Numbered(String number, Child child, ChildData data) {}

    static List<String> row(Map<String, String> cells, ClinicFile file) {
        return file.columns().stream()
                .map(column -> cells.getOrDefault(column, ""))
                .toList();
    }
}
