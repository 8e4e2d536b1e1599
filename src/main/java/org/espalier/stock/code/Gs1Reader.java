package org.espalier.stock.code;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.espalier.stock.code.ReadCode.Issuer;
import org.espalier.stock.code.ReadCode.Part;

/** Reads GS1 element strings, bracketed as labels print them or raw as scanners send them. */
final class Gs1Reader {

    /** The separator, or what a keyboard puts in its place: none of these can be part of a value. */
    private static final Pattern SEPARATORS = Pattern.compile("[\\x1D\\u241D^|~]");

    private static final Pattern BRACKETED = Pattern.compile("\\((\\d{2,4})\\)");
    private static final int GTIN_LENGTH = 14;
    private static final String GTIN = "01";

    private final LocalDate today;

    Gs1Reader(LocalDate today) {
        this.today = today;
    }

    /** A product number of 8, 12, 13 or 14 digits that stands alone. */
    static ScannedCode articleNumber(String digits) {
        var gtin = "0".repeat(GTIN_LENGTH - digits.length()) + digits;
        if (!CheckDigits.isModulo10(gtin)) {
            return new UnreadCode(CodeProblem.WRONG_CHECK_DIGIT, digits, digits);
        }
        var title = SyntaxDictionary.GS1.find(GTIN).orElseThrow().title();
        return new ReadCode(
                Issuer.GS1,
                Optional.of(gtin),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                List.of(new Part(GTIN, title, gtin)));
    }

    ScannedCode read(String content) {
        var parts = new ArrayList<Part>();
        var problem = content.startsWith("(") ? readBracketed(content, parts) : readRaw(content, parts);
        return problem.or(() -> Association.clash(parts))
                .<ScannedCode>map(unread -> unread)
                .orElseGet(() -> understood(parts));
    }

    private Optional<UnreadCode> readRaw(String content, List<Part> parts) {
        for (var stretch : SEPARATORS.split(content)) {
            var rest = stretch;
            while (!rest.isEmpty()) {
                var found = SyntaxDictionary.GS1.at(rest);
                if (found.isEmpty()) {
                    return Optional.of(unknown(rest, parts));
                }
                var identifier = found.get();
                rest = rest.substring(identifier.digits().length());
                int length =
                        identifier.predefinedLength() ? Math.min(identifier.longest(), rest.length()) : rest.length();
                var problem = add(identifier, rest.substring(0, length), parts);
                if (problem.isPresent()) {
                    return problem;
                }
                rest = rest.substring(length);
            }
        }
        return parts.isEmpty() ? Optional.of(unknown(content, parts)) : Optional.empty();
    }

    private static UnreadCode unknown(String rest, List<Part> parts) {
        var problem = parts.isEmpty() ? CodeProblem.NEITHER : CodeProblem.UNKNOWN_IDENTIFIER;
        return new UnreadCode(problem, rest.substring(0, Math.min(4, rest.length())), rest);
    }

    private Optional<UnreadCode> readBracketed(String content, List<Part> parts) {
        var heads = BRACKETED
                .matcher(content)
                .results()
                .filter(head -> head.start() == 0 || content.charAt(head.start() - 1) != '\\')
                .filter(head -> head.start() == 0
                        || SyntaxDictionary.GS1.find(head.group(1)).isPresent())
                .toList();
        for (int at = 0; at < heads.size(); at++) {
            int end = at + 1 < heads.size() ? heads.get(at + 1).start() : content.length();
            var value = content.substring(heads.get(at).end(), end).strip().replace("\\(", "(");
            var digits = heads.get(at).group(1);
            var identifier = SyntaxDictionary.GS1.find(digits);
            var problem = identifier.isEmpty()
                    ? Optional.of(new UnreadCode(CodeProblem.UNKNOWN_IDENTIFIER, "(" + digits + ")", value))
                    : add(identifier.get(), value, parts);
            if (problem.isPresent()) {
                return problem;
            }
        }
        return parts.isEmpty() ? Optional.of(unknown(content, parts)) : Optional.empty();
    }

    private static Optional<UnreadCode> add(ApplicationIdentifier identifier, String value, List<Part> parts) {
        parts.add(new Part(identifier.digits(), identifier.title(), value));
        return identifier.problem(value);
    }

    private ReadCode understood(List<Part> parts) {
        return new ReadCode(
                Issuer.GS1,
                value(parts, GTIN).or(() -> value(parts, "8006").map(piece -> piece.substring(0, GTIN_LENGTH))),
                value(parts, "10"),
                value(parts, "17").or(() -> value(parts, "7003")).flatMap(this::day),
                value(parts, "21"),
                value(parts, "11").flatMap(this::day),
                value(parts, "30").map(Integer::valueOf),
                Optional.empty(),
                Optional.empty(),
                parts);
    }

    private Optional<LocalDate> day(String value) {
        return ShortDates.yearMonthDay(value.substring(0, 6), today);
    }

    private static Optional<String> value(List<Part> parts, String identifier) {
        return parts.stream()
                .filter(part -> part.identifier().equals(identifier))
                .map(Part::value)
                .findFirst();
    }
}
