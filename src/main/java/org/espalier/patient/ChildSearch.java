package org.espalier.patient;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.espalier.kit.DateEntry;

/**
 * What a child is looked for by: words of the name, and codes, each a local number or a birth date. A child must match
 * every part.
 */
record ChildSearch(List<String> words, List<Code> codes) {

    private static final DateTimeFormatter DIGITS = DateTimeFormatter.ofPattern("ddMMuuuu");
    private static final int LONGEST = 200;
    private static final int PARTS_OF_A_DATE = 3;
    private static final int SHORTEST_WORD_WITH_A_SLIP = 4;
    private static final String NOTHING = "(?!)";

    /** A part with digits: the number as typed, and the days it can be read as. */
    record Code(String number, List<LocalDate> days) {

        String numberSlip() {
            return "^" + OneSlip.pattern(number) + "$";
        }

        String exactDays() {
            return days.isEmpty()
                    ? NOTHING
                    : anyOf(days.stream().map(DIGITS::format).toList());
        }

        /** One digit wrong or two swapped in any reading, or day and month swapped. */
        String daySlips() {
            return days.isEmpty()
                    ? NOTHING
                    : anyOf(days.stream()
                            .map(DIGITS::format)
                            .flatMap(typed -> Stream.of(
                                    OneSlip.pattern(typed),
                                    typed.substring(2, 4) + typed.substring(0, 2) + typed.substring(4)))
                            .toList());
        }

        private static String anyOf(List<String> patterns) {
            return patterns.stream().collect(Collectors.joining("|", "^(?:", ")$"));
        }
    }

    static ChildSearch of(String text, Locale language, LocalDate today) {
        var parts = Arrays.stream(text.substring(0, Math.min(text.length(), LONGEST))
                        .strip()
                        .split("[\\s,;]+"))
                .filter(part -> !part.isEmpty())
                .toList();
        var words = new ArrayList<String>();
        var codes = new ArrayList<Code>();
        int at = 0;
        while (at < parts.size()) {
            int length = dateLength(parts, at, language, today);
            var part = String.join(" ", parts.subList(at, at + Math.max(length, 1)));
            if (length > 0) {
                codes.add(new Code(part, days(part, language, today)));
            } else if (part.chars().anyMatch(Character::isDigit)) {
                codes.add(new Code(part, List.of()));
            } else {
                words.addAll(PlainName.words(part));
            }
            at += Math.max(length, 1);
        }
        return new ChildSearch(words, codes);
    }

    /** Children who may be the same as this one: a like name and a like day of birth. */
    static ChildSearch alike(ChildData data) {
        var day = new Code(DIGITS.format(data.birthDate()), List.of(data.birthDate()));
        return new ChildSearch(PlainName.words(PlainName.of(data)), List.of(day));
    }

    boolean isEmpty() {
        return words.isEmpty() && codes.isEmpty();
    }

    /** Each word's pattern with a slip, at the beginning of a word of the name; short words forgive none. */
    List<String> wordSlips() {
        return words.stream()
                .map(word -> "\\m" + (word.length() < SHORTEST_WORD_WITH_A_SLIP ? word : OneSlip.pattern(word)))
                .toList();
    }

    private static int dateLength(List<String> parts, int at, Locale language, LocalDate today) {
        return IntStream.of(PARTS_OF_A_DATE, 2, 1)
                .filter(length -> at + length <= parts.size())
                .filter(length -> !days(String.join(" ", parts.subList(at, at + length)), language, today)
                        .isEmpty())
                .findFirst()
                .orElse(0);
    }

    private static List<LocalDate> days(String text, Locale language, LocalDate today) {
        return switch (DateEntry.of(text, language, today)) {
            case DateEntry.Read(var day) -> List.of(day);
            case DateEntry.Ambiguous(var dayFirst, var monthFirst) -> List.of(dayFirst, monthFirst);
            case DateEntry.Unreadable() -> List.of();
        };
    }
}
