package org.espalier.science.alignment;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.espalier.science.statistics.PairedReadings;
import org.espalier.science.statistics.Repeatability;

/**
 * How far readings of one quantity differ at a site, from its own double readings. Until there are thirty, the
 * published figure stands in for those that are missing:
 *
 * <pre>
 * SEM² = (n · own² + (30 − n) · published²) / 30     n &lt; 30 and a figure is published
 * SEM  = own                                         n ≥ 30
 * </pre>
 *
 * <p>Own counts a lasting difference between the readers as error. Source: published figures as in {@link ReaderError};
 * thirty, and the weights before it, are judged.
 *
 * @param doubleReadings how many the site has
 * @param basis what the figure is made of
 * @param standardError of one reading, in the quantity's unit, not below 0
 */
public record SiteRepeatability(int doubleReadings, Basis basis, double standardError) {

    /** How many double readings a site needs for a figure of its own. */
    public static final int ENOUGH = 30;

    private static final double TWO_SIDED_95 = 1.96;

    /** What a figure is made of. */
    public enum Basis {
        /** The published figure alone. */
        PUBLISHED,
        /** The site's double readings, and the published figure for those missing to thirty. */
        BOTH,
        /** The site's double readings alone. */
        OWN
    }

    /**
     * The figure for a quantity.
     *
     * @param quantity what was read
     * @param doubleReadings the site's pairs of readings of one film by two readers, blind to each other
     * @return empty where none is published and the site has not enough
     */
    public static Optional<SiteRepeatability> of(Quantity quantity, List<PairedReadings> doubleReadings) {
        int n = doubleReadings.size();
        OptionalDouble published = ReaderError.halfWidth95(quantity);
        if (n >= ENOUGH) {
            return Optional.of(new SiteRepeatability(n, Basis.OWN, own(doubleReadings)));
        }
        if (published.isEmpty()) {
            return Optional.empty();
        }
        double prior = published.getAsDouble() / TWO_SIDED_95;
        if (n == 0) {
            return Optional.of(new SiteRepeatability(0, Basis.PUBLISHED, prior));
        }
        double own = own(doubleReadings);
        double mixed = Math.sqrt((n * own * own + (ENOUGH - n) * prior * prior) / ENOUGH);
        return Optional.of(new SiteRepeatability(n, Basis.BOTH, mixed));
    }

    /** Half the width of the 95 % range of one reading. */
    public double halfWidth95() {
        return TWO_SIDED_95 * standardError;
    }

    /** The smallest difference of two readings that is more than reading again would give. */
    public double smallestChange95() {
        return Math.sqrt(2) * halfWidth95();
    }

    private static double own(List<PairedReadings> doubleReadings) {
        return Repeatability.of(doubleReadings).withinSubjectDeviation();
    }
}
