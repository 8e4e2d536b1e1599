package org.espalier.access;

import java.security.SecureRandom;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * A password made by the house, told once and changed at the first sign-in: 16 signs that are not taken for each other.
 */
public record FirstPassword(StaffId staff, String password) {

    private static final String SIGNS = "abcdefghjkmnpqrstuvwxyz23456789";
    private static final SecureRandom RANDOM = new SecureRandom();
    private static final int GROUPS = 4;
    private static final int GROUP_LENGTH = 4;

    static FirstPassword of(StaffId staff) {
        return new FirstPassword(
                staff, IntStream.range(0, GROUPS).mapToObj(group -> group()).collect(Collectors.joining("-")));
    }

    private static String group() {
        return RANDOM.ints(GROUP_LENGTH, 0, SIGNS.length())
                .mapToObj(SIGNS::charAt)
                .map(String::valueOf)
                .collect(Collectors.joining());
    }

    /** A password never reaches a log. */
    @Override
    public String toString() {
        return staff.toString();
    }
}
