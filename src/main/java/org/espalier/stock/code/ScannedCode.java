package org.espalier.stock.code;

import java.time.LocalDate;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;

/** What a scanner, a camera or a keyboard gave, as far as it could be understood. */
public sealed interface ScannedCode permits ReadCode, UnreadCode {

    /** Plain article numbers, as retail codes carry them and as people type them. */
    Pattern ARTICLE_NUMBER = Pattern.compile("\\d{8}|\\d{12,14}");

    /** Symbology identifiers that say the content is a GS1 element string. */
    Set<String> OF_GS1 = Set.of("]C1", "]e0", "]e1", "]e2", "]d2", "]Q3", "]J1", "]L2");

    /**
     * Reads a code. A symbology identifier in front, brackets around application identifiers, the separator as the
     * control character or as one of the signs that keyboards put in its place, and the asterisks that are printed
     * around HIBC are all understood.
     *
     * @param text as it came, without what the scanner sends for the return key
     * @param today the day of reading, from which two-digit years take their century
     */
    static ScannedCode parse(String text, LocalDate today) {
        var code = withoutLineEnd(text);
        if (code.isBlank()) {
            return new UnreadCode(CodeProblem.EMPTY, "", "");
        }
        var symbology = code.startsWith("]") && code.length() > 3 ? code.substring(0, 3) : "";
        var content = code.substring(symbology.length());
        if (OF_GS1.contains(symbology)) {
            return new Gs1Reader(today).read(content);
        }
        var bare = content.strip().toUpperCase(Locale.ROOT);
        if (bare.startsWith("+") || bare.startsWith("*+")) {
            return new HibcReader(today).read(content.stripLeading().toUpperCase(Locale.ROOT));
        }
        if (ARTICLE_NUMBER.matcher(bare).matches()) {
            return Gs1Reader.articleNumber(bare);
        }
        return new Gs1Reader(today).read(content.strip());
    }

    private static String withoutLineEnd(String text) {
        return text.replaceAll("[\\r\\n\\t]+$", "");
    }
}
