package org.espalier.reading;

import java.util.List;
import java.util.Optional;
import org.espalier.science.alignment.Quantity;
import org.espalier.science.alignment.SiteRepeatability;
import org.espalier.science.statistics.BlandAltman;
import org.espalier.science.statistics.IntraclassCorrelation;
import org.espalier.science.statistics.PairedReadings;
import org.espalier.science.statistics.VarianceTable;

/**
 * How far readers of one hospital agree in a quantity.
 *
 * @param pairs how many limbs were read by two, blind to each other
 * @param differences of the second from the first reading; empty with fewer than three pairs
 * @param correlation of a single reading by any reader, absolute agreement; empty likewise, or where nothing varies
 * @param repeatability with the published figure standing in for pairs still missing; empty where there is none
 */
public record Agreement(
        Quantity quantity,
        int pairs,
        Optional<BlandAltman> differences,
        Optional<IntraclassCorrelation> correlation,
        Optional<SiteRepeatability> repeatability) {

    private static final int LEAST_PAIRS = 3;

    static Agreement of(Quantity quantity, List<PairedReadings> pairs) {
        boolean enough = pairs.size() >= LEAST_PAIRS;
        return new Agreement(
                quantity,
                pairs.size(),
                enough ? Optional.of(BlandAltman.of(pairs)) : Optional.empty(),
                enough
                        ? IntraclassCorrelation.agreement(VarianceTable.of(pairs.stream()
                                .map(pair -> new double[] {pair.first(), pair.second()})
                                .toList()))
                        : Optional.empty(),
                SiteRepeatability.of(quantity, enough ? pairs : List.of()));
    }

    /** Whether anything can be said of the quantity. */
    boolean tells() {
        return pairs > 0 || repeatability.isPresent();
    }
}
