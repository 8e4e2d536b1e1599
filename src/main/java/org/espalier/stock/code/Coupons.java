package org.espalier.stock.code;

import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** The two coupon codes of North America, whose fields each begin with their own length. */
final class Coupons {

    private static final String COMPANY = counted(0, 6, 6);
    private static final String COMPANY_OR_SAME = "(?:" + COMPANY + "|9)";
    private static final String OFFER = "\\d{6}";
    private static final String AMOUNT = counted(1, 5, 0);
    private static final String PURCHASE = AMOUNT + "[0-49]\\d{3}";
    private static final String SERIAL = counted(0, 9, 6);

    private static final Pattern FIRST_FORM = Pattern.compile(COMPANY + OFFER + AMOUNT + PURCHASE
            + "(?:1[0-3]" + PURCHASE + COMPANY_OR_SAME + ")?"
            + "(?:2" + PURCHASE + COMPANY_OR_SAME + ")?"
            + "(?:3(?<until>\\d{6}))?"
            + "(?:4(?<from>\\d{6}))?"
            + "(?:5" + SERIAL + ")?"
            + "(?:6" + counted(1, 7, 6) + ")?"
            + "(?:9[01256][0-2]\\d[01])?");

    private static final Pattern POSITIVE_OFFER = Pattern.compile("[01]" + COMPANY + OFFER + SERIAL);

    private Coupons() {}

    static boolean isFirstForm(String value) {
        var form = FIRST_FORM.matcher(value);
        if (!form.matches()) {
            return false;
        }
        var until = form.group("until");
        var from = form.group("from");
        return (until == null || ShortDates.isDay(until, false))
                && (from == null || ShortDates.isDay(from, false))
                && (until == null || from == null || from.compareTo(until) <= 0);
    }

    static boolean isPositiveOffer(String value) {
        return POSITIVE_OFFER.matcher(value).matches();
    }

    private static String counted(int least, int most, int more) {
        return IntStream.rangeClosed(least, most)
                .mapToObj(length -> length + "\\d{" + (length + more) + "}")
                .collect(Collectors.joining("|", "(?:", ")"));
    }
}
