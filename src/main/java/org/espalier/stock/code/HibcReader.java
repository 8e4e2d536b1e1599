package org.espalier.stock.code;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.espalier.stock.code.ReadCode.Issuer;
import org.espalier.stock.code.ReadCode.Part;

/**
 * Reads HIBC supplier labels: primary, secondary, and both in one code (ANSI/HIBC 2.6). A label's last character is its
 * check character; a secondary code that stands alone has before it the check character of its primary code.
 */
final class HibcReader {

    private static final Pattern PRIMARY =
            Pattern.compile("(?<labeller>[A-Z][A-Z0-9]{3})(?<number>[A-Z0-9]{1,18})(?<unit>\\d)");
    private static final Pattern SECONDARY =
            Pattern.compile("\\$\\$(?<plus>\\+)?(?:8(?<two>\\d{2})|9(?<five>\\d{5}))?(?<dated>[0-7].*)?"
                    + "|\\$(?<more>\\+)?(?<plain>.*)" + "|(?<julian>\\d{5})(?<after>.*)");
    private static final Pattern NAME = Pattern.compile("[A-Z0-9\\-. ]{0,18}");

    private final LocalDate today;
    private final List<Part> parts = new ArrayList<>();
    private Optional<String> product = Optional.empty();
    private Optional<String> lot = Optional.empty();
    private Optional<String> serial = Optional.empty();
    private Optional<LocalDate> expiry = Optional.empty();
    private Optional<LocalDate> produced = Optional.empty();
    private Optional<Integer> quantity = Optional.empty();
    private Optional<Character> link = Optional.empty();
    private Optional<Character> check = Optional.empty();

    HibcReader(LocalDate today) {
        this.today = today;
    }

    ScannedCode read(String printed) {
        var code = withoutAsterisks(printed);
        if (!CheckDigits.isOfSet43(code)) {
            return new UnreadCode(CodeProblem.WRONG_CHARACTER, code, code);
        }
        if (code.length() < 3) {
            return new UnreadCode(CodeProblem.TOO_SHORT, code, code);
        }
        var body = code.substring(0, code.length() - 1);
        char last = code.charAt(code.length() - 1);
        if (CheckDigits.modulo43(body) != last) {
            return new UnreadCode(CodeProblem.WRONG_CHECK_CHARACTER, code, String.valueOf(last));
        }
        return readBody(body.substring(1), last)
                .<ScannedCode>map(unread -> unread)
                .orElseGet(this::understood);
    }

    private static String withoutAsterisks(String printed) {
        var code = printed.startsWith("*") ? printed.substring(1) : printed;
        return printed.startsWith("*") && code.endsWith("*") ? code.substring(0, code.length() - 1) : code;
    }

    private Optional<UnreadCode> readBody(String body, char last) {
        if (!Character.isLetter(body.charAt(0))) {
            link = Optional.of(body.charAt(body.length() - 1));
            return readSecondary(body.substring(0, body.length() - 1));
        }
        var stretches = body.split("/", -1);
        var primary = PRIMARY.matcher(stretches[0]);
        if (!primary.matches()) {
            return Optional.of(new UnreadCode(CodeProblem.NO_LABELLER, stretches[0], stretches[0]));
        }
        product = Optional.of(stretches[0]);
        parts.add(new Part("+", "LIC", primary.group("labeller")));
        parts.add(new Part("+", "PCN", primary.group("number")));
        parts.add(new Part("+", "U/M", primary.group("unit")));
        if (stretches.length == 1) {
            check = Optional.of(last);
        }
        for (int at = 1; at < stretches.length; at++) {
            var problem = at == 1 && stretches[at].matches("[$\\d].*") && !isAdditional(stretches[at])
                    ? readSecondary(stretches[at])
                    : readAdditional(stretches[at]);
            if (problem.isPresent()) {
                return problem;
            }
        }
        return Optional.empty();
    }

    private static boolean isAdditional(String stretch) {
        return stretch.matches("1[46]D.*");
    }

    private Optional<UnreadCode> readSecondary(String stretch) {
        var form = SECONDARY.matcher(stretch);
        if (!form.matches()) {
            return Optional.of(new UnreadCode(CodeProblem.NO_SECONDARY_FORM, stretch, stretch));
        }
        if (form.group("julian") != null) {
            return dated("5" + form.group("julian") + form.group("after"), false);
        }
        if (form.group("plain") != null) {
            return named(form.group("plain"), form.group("more") != null);
        }
        Optional.ofNullable(form.group("two"))
                .or(() -> Optional.ofNullable(form.group("five")))
                .ifPresent(count -> {
                    quantity = Optional.of(Integer.valueOf(count));
                    parts.add(new Part("$$", "QUANTITY", count));
                });
        var rest = form.group("dated");
        return rest == null ? Optional.empty() : dated(rest, form.group("plus") != null);
    }

    /** The first digit says the form of the date; 0 and 1 are themselves the first of the month in MMYY. */
    private Optional<UnreadCode> dated(String stretch, boolean isSerial) {
        int length =
                switch (stretch.charAt(0)) {
                    case '0', '1' -> 4;
                    case '2', '3' -> 7;
                    case '4' -> 9;
                    case '5' -> 6;
                    case '6' -> 8;
                    default -> 1;
                };
        if (stretch.length() < length || !stretch.substring(0, length).matches("\\d+")) {
            return Optional.of(new UnreadCode(CodeProblem.NO_SUCH_DATE, stretch, stretch));
        }
        if (length > 1) {
            expiry = day(stretch.substring(0, length));
            if (expiry.isEmpty()) {
                return Optional.of(new UnreadCode(CodeProblem.NO_SUCH_DATE, stretch, stretch.substring(0, length)));
            }
            parts.add(new Part("$$", "EXPIRY", stretch.substring(0, length)));
        }
        return named(stretch.substring(length), isSerial);
    }

    private Optional<LocalDate> day(String digits) {
        return switch (digits.charAt(0)) {
            case '0', '1' -> ShortDates.yearMonthDay(digits.substring(2, 4) + digits.substring(0, 2) + "00", today);
            case '2' -> exact(digits.substring(5, 7) + digits.substring(1, 5));
            case '3' -> exact(digits.substring(1));
            case '4' -> isHour(digits.substring(7)) ? exact(digits.substring(1, 7)) : Optional.empty();
            case '5' -> ShortDates.yearDay(digits.substring(1), today);
            default ->
                isHour(digits.substring(6)) ? ShortDates.yearDay(digits.substring(1, 6), today) : Optional.empty();
        };
    }

    private Optional<LocalDate> exact(String yearMonthDay) {
        return yearMonthDay.endsWith("00") ? Optional.empty() : ShortDates.yearMonthDay(yearMonthDay, today);
    }

    private static boolean isHour(String digits) {
        return Linter.HH.holds(digits);
    }

    private Optional<UnreadCode> named(String name, boolean isSerial) {
        if (!NAME.matcher(name).matches()) {
            var problem = name.length() > 18 ? CodeProblem.TOO_LONG : CodeProblem.WRONG_CHARACTER;
            return Optional.of(new UnreadCode(problem, name, name));
        }
        if (name.isEmpty()) {
            return Optional.empty();
        }
        parts.add(new Part("$", isSerial ? "SERIAL" : "LOT", name));
        if (isSerial) {
            serial = Optional.of(name);
        } else {
            lot = Optional.of(name);
        }
        return Optional.empty();
    }

    private Optional<UnreadCode> readAdditional(String stretch) {
        if (isAdditional(stretch)) {
            return additionalDay(stretch);
        }
        if (stretch.matches("S[A-Z0-9\\-. ]{1,18}")) {
            return named(stretch.substring(1), true);
        }
        if (stretch.matches("Q\\d{1,5}")) {
            quantity = Optional.of(Integer.valueOf(stretch.substring(1)));
            parts.add(new Part("Q", "QUANTITY", stretch.substring(1)));
            return Optional.empty();
        }
        return Optional.of(new UnreadCode(CodeProblem.NO_SECONDARY_FORM, stretch, stretch));
    }

    private Optional<UnreadCode> additionalDay(String stretch) {
        var digits = stretch.substring(3);
        var day = digits.matches("\\d{8}") ? ShortDates.full(digits) : Optional.<LocalDate>empty();
        if (day.isEmpty()) {
            return Optional.of(new UnreadCode(CodeProblem.NO_SUCH_DATE, stretch, digits));
        }
        boolean isExpiry = stretch.startsWith("14D");
        parts.add(new Part(stretch.substring(0, 3), isExpiry ? "EXPIRY" : "MANUFACTURED", digits));
        if (isExpiry) {
            expiry = day;
        } else {
            produced = day;
        }
        return Optional.empty();
    }

    private ReadCode understood() {
        return new ReadCode(Issuer.HIBC, product, lot, expiry, serial, produced, quantity, link, check, parts);
    }
}
