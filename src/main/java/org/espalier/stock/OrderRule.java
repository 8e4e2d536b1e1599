package org.espalier.stock;

/**
 * How long goods take to come, and how surely they must be enough until then.
 *
 * @param leadDays from ordering to the shelf, 1 to 365
 * @param service the chance that what is there is enough, 0.5 to 0.999
 */
public record OrderRule(int leadDays, double service) {

    /** Three weeks, 95 %: to be changed by who orders. */
    public static final OrderRule DEFAULT = new OrderRule(21, 0.95);

    private static final int MOST_DAYS = 365;

    public OrderRule {
        if (leadDays < 1 || leadDays > MOST_DAYS || !(service >= 0.5 && service <= 0.999)) {
            throw new IllegalArgumentException("1 to 365 days, 0.5 to 0.999: " + leadDays + ", " + service);
        }
    }
}
