package org.espalier.stock.code;

import java.util.stream.IntStream;

/** The check digits and characters of both standards. */
final class CheckDigits {

    private static final String CSET_82 =
            "!\"%&'()*+,-./0123456789:;<=>?ABCDEFGHIJKLMNOPQRSTUVWXYZ_abcdefghijklmnopqrstuvwxyz";
    private static final String CSET_32 = "23456789ABCDEFGHJKLMNPQRSTUVWXYZ";
    private static final String SET_43 = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ-. $/+%";
    private static final int PAIR_MODULUS = 1021;
    private static final int HALF = 32;

    private CheckDigits() {}

    /**
     * Weights 3 and 1 in turn, 3 beside the check digit; all with it a multiple of ten (General Specifications, 7.9.1).
     */
    static boolean isModulo10(String digits) {
        int last = digits.length() - 1;
        int sum = IntStream.rangeClosed(0, last)
                .map(at -> (digits.charAt(at) - '0') * ((last - at) % 2 == 1 ? 3 : 1))
                .sum();
        return sum % 10 == 0;
    }

    /** Two characters after values weighted with primes from the right, modulo 1021 (General Specifications, 7.9.5). */
    static boolean isPair(String value) {
        if (value.length() < 2) {
            return false;
        }
        var data = value.substring(0, value.length() - 2);
        int prime = 1;
        int sum = 0;
        for (int at = data.length() - 1; at >= 0; at--) {
            prime = primeAfter(prime);
            sum += CSET_82.indexOf(data.charAt(at)) * prime;
        }
        int rest = sum % PAIR_MODULUS;
        return value.endsWith("" + CSET_32.charAt(rest / HALF) + CSET_32.charAt(rest % HALF));
    }

    /** The character whose place in the set of 43 is the sum of the others' places, modulo 43 (ANSI/HIBC 2). */
    static char modulo43(String text) {
        int sum = text.chars().map(SET_43::indexOf).sum();
        return SET_43.charAt(sum % SET_43.length());
    }

    static boolean isOfSet43(String text) {
        return text.chars().allMatch(character -> SET_43.indexOf(character) >= 0);
    }

    private static int primeAfter(int prime) {
        return IntStream.iterate(prime + 1, next -> next + 1)
                .filter(next -> IntStream.rangeClosed(2, (int) Math.sqrt(next)).noneMatch(by -> next % by == 0))
                .findFirst()
                .orElseThrow();
    }
}
