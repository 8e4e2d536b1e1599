package org.espalier.stock.code;

import java.math.BigInteger;
import java.util.Locale;
import java.util.function.Predicate;
import java.util.regex.Pattern;

/** The rules that the dictionary names, each under its name there. Characters and lengths were checked before. */
enum Linter {
    CSUM(CheckDigits::isModulo10, CodeProblem.WRONG_CHECK_DIGIT),
    CSUMALPHA(CheckDigits::isPair, CodeProblem.WRONG_CHECK_DIGIT),
    GCPPOS1(matching("\\d{4}.*"), CodeProblem.NOT_ALLOWED),
    GCPPOS2(matching(".\\d{4}.*"), CodeProblem.NOT_ALLOWED),
    YYMMDD(value -> ShortDates.isDay(value, false), CodeProblem.NO_SUCH_DATE),
    YYMMD0(value -> ShortDates.isDay(value, true), CodeProblem.NO_SUCH_DATE),
    YYYYMMDD(value -> ShortDates.full(value).isPresent(), CodeProblem.NO_SUCH_DATE),
    HH(matching("[01]\\d|2[0-3]"), CodeProblem.NO_SUCH_TIME),
    MI(matching("[0-5]\\d"), CodeProblem.NO_SUCH_TIME),
    SS(matching("[0-5]\\d"), CodeProblem.NO_SUCH_TIME),
    HHMI(matching("(?:[01]\\d|2[0-3])[0-5]\\d"), CodeProblem.NO_SUCH_TIME),
    ISO3166(CodeLists::isCountry, CodeProblem.NOT_IN_LIST),
    ISO3166999(value -> value.equals("999") || CodeLists.isCountry(value), CodeProblem.NOT_IN_LIST),
    ISO3166ALPHA2(CodeLists::isCountryLetters, CodeProblem.NOT_IN_LIST),
    ISO4217(CodeLists::isCurrency, CodeProblem.NOT_IN_LIST),
    ISO5218(matching("[0129]"), CodeProblem.NOT_IN_LIST),
    MEDIATYPE(matching("0[1-9]|10|[89]\\d"), CodeProblem.NOT_IN_LIST),
    PACKAGETYPE(CodeLists::isPackage, CodeProblem.NOT_IN_LIST),
    YESNO(matching("[01]"), CodeProblem.NOT_IN_LIST),
    WINDING(matching("[019]"), CodeProblem.NOT_IN_LIST),
    IMPORTERIDX(matching("[-0-9A-Z_a-z]"), CodeProblem.NOT_ALLOWED),
    HYPHEN(matching("-+"), CodeProblem.NOT_ALLOWED),
    ZERO(matching("0+"), CodeProblem.NOT_ALLOWED),
    NONZERO(matching("\\d*[1-9]\\d*"), CodeProblem.NOT_ALLOWED),
    NOZEROPREFIX(matching("0|[1-9]\\d*"), CodeProblem.NOT_ALLOWED),
    HASNONDIGIT(matching(".*\\D.*"), CodeProblem.NOT_ALLOWED),
    PCENC(matching("(?:[^%]|%[0-9A-Fa-f]{2})*"), CodeProblem.NOT_ALLOWED),
    LATITUDE(upTo("1800000000"), CodeProblem.NOT_ALLOWED),
    LONGITUDE(upTo("3600000000"), CodeProblem.NOT_ALLOWED),
    PIECEOFTOTAL(Linter::isPieceOfTotal, CodeProblem.NOT_ALLOWED),
    POSINSEQSLASH(Linter::isPositionInSequence, CodeProblem.NOT_ALLOWED),
    IBAN(Linter::isAccountNumber, CodeProblem.WRONG_CHECK_DIGIT),
    COUPONCODE(Coupons::isFirstForm, CodeProblem.NOT_ALLOWED),
    COUPONPOSOFFER(Coupons::isPositiveOffer, CodeProblem.NOT_ALLOWED);

    private final Predicate<String> rule;
    private final CodeProblem problem;

    Linter(Predicate<String> rule, CodeProblem problem) {
        this.rule = rule;
        this.problem = problem;
    }

    static Linter named(String name) {
        return valueOf(name.toUpperCase(Locale.ROOT));
    }

    boolean holds(String value) {
        return rule.test(value);
    }

    CodeProblem problem() {
        return problem;
    }

    private static Predicate<String> matching(String pattern) {
        return Pattern.compile(pattern).asMatchPredicate();
    }

    /** Of digits of one length, so that the order of strings is that of numbers. */
    private static Predicate<String> upTo(String most) {
        return value -> value.compareTo(most) <= 0;
    }

    private static boolean isPieceOfTotal(String value) {
        int half = value.length() / 2;
        int piece = Integer.parseInt(value, 0, half, 10);
        return piece > 0 && piece <= Integer.parseInt(value, half, value.length(), 10);
    }

    private static boolean isPositionInSequence(String value) {
        if (!value.matches("[1-9]\\d*/[1-9]\\d*")) {
            return false;
        }
        int slash = value.indexOf('/');
        return new BigInteger(value.substring(0, slash)).compareTo(new BigInteger(value.substring(slash + 1))) <= 0;
    }

    /** ISO 13616: country, two check digits, then the account; moved behind it, all a multiple of 97 and 1. */
    private static boolean isAccountNumber(String value) {
        if (!value.matches("[A-Z]{2}\\d{2}[0-9A-Z]+") || !CodeLists.isCountryLetters(value.substring(0, 2))) {
            return false;
        }
        var digits = new StringBuilder();
        (value.substring(4) + value.substring(0, 4))
                .chars()
                .forEach(character -> digits.append(Character.digit(character, 36)));
        return new BigInteger(digits.toString()).mod(BigInteger.valueOf(97)).equals(BigInteger.ONE);
    }
}
