package org.espalier.science.statistics;

/**
 * How a yes-or-no test agreed with what came of those tested: the four counts and the four rates made of them.
 *
 * <p>Source: general statistics. The predictive values hold for the share of diseased in the counts alone, never for
 * another clinic.
 *
 * @param truePositive test says yes, rightly
 * @param falsePositive test says yes, wrongly
 * @param falseNegative test says no, wrongly
 * @param trueNegative test says no, rightly
 */
public record TwoByTwo(int truePositive, int falsePositive, int falseNegative, int trueNegative) {

    /**
     * Checks the counts.
     *
     * @throws IllegalArgumentException if one is negative, or nobody is diseased, healthy, positive or negative
     */
    public TwoByTwo {
        if (truePositive < 0 || falsePositive < 0 || falseNegative < 0 || trueNegative < 0) {
            throw new IllegalArgumentException("Counts are not negative: " + truePositive + ", " + falsePositive + ", "
                    + falseNegative + ", " + trueNegative);
        }
        if (truePositive + falseNegative == 0
                || falsePositive + trueNegative == 0
                || truePositive + falsePositive == 0
                || falseNegative + trueNegative == 0) {
            throw new IllegalArgumentException("Rates need both kinds of limbs and both answers of the test");
        }
    }

    /** The part of the diseased that the test finds, 0 to 1. */
    public double sensitivity() {
        return part(truePositive, falseNegative);
    }

    /** The part of the healthy that the test lets go, 0 to 1. */
    public double specificity() {
        return part(trueNegative, falsePositive);
    }

    /** The part of those called diseased who are, 0 to 1. */
    public double positivePredictiveValue() {
        return part(truePositive, falsePositive);
    }

    /** The part of those called healthy who are, 0 to 1. */
    public double negativePredictiveValue() {
        return part(trueNegative, falseNegative);
    }

    private static double part(int these, int others) {
        return (double) these / (these + others);
    }
}
