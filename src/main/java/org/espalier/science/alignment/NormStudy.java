package org.espalier.science.alignment;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.espalier.science.quantity.PrintedTable;

/**
 * A study whose printed norms can be chosen.
 *
 * @param code its name in files
 * @param citation where it was printed
 * @param population who was measured
 * @param checking how far it has been checked
 */
public record NormStudy(String code, String citation, String population, NormalRange.Checking checking) {

    private static final List<NormStudy> ALL = PrintedTable.of(NormStudy.class, "norm-studies.csv").rows().stream()
            .map(row -> new NormStudy(
                    row.text("study"),
                    row.text("citation"),
                    row.text("population"),
                    NormalRange.Checking.valueOf(row.text("checked").toUpperCase(Locale.ROOT))))
            .toList();

    /** Every study, in the order of the table. */
    public static List<NormStudy> all() {
        return ALL;
    }

    /** The study with this code. */
    public static Optional<NormStudy> ofCode(String code) {
        return ALL.stream().filter(study -> study.code.equals(code)).findFirst();
    }
}
