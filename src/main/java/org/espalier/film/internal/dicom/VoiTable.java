package org.espalier.film.internal.dicom;

import java.util.List;
import java.util.Optional;

/** A table of light that the sender made for this film: an item of VOI LUT Sequence (PS3.3 section C.11.2.1.1). */
public final class VoiTable implements Voi {

    private final LookUpTable table;
    private final String explanation;

    private VoiTable(LookUpTable table, String explanation) {
        this.table = table;
        this.explanation = explanation;
    }

    static List<VoiTable> of(DataSet dataSet, boolean signed) {
        return dataSet.items(Tag.VOI_LUT_SEQUENCE).stream()
                .map(item -> ofItem(item, signed))
                .flatMap(Optional::stream)
                .toList();
    }

    private static Optional<VoiTable> ofItem(DataSet item, boolean signed) {
        return LookUpTable.of(item, Tag.LUT_DESCRIPTOR, Tag.LUT_DATA, signed)
                .map(table ->
                        new VoiTable(table, item.string(Tag.LUT_EXPLANATION).orElse("")));
    }

    @Override
    public double light(double value) {
        return table.part(value);
    }

    @Override
    public String explanation() {
        return explanation;
    }
}
