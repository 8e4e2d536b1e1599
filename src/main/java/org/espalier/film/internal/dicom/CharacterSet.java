package org.espalier.film.internal.dicom;

import java.nio.ByteBuffer;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The character sets of a data set (PS3.3 section C.12.1.1.2, PS3.5 section 6.1.2). Text may change between them by
 * escape sequences. Bytes outside the declared sets become U+FFFD: a name is rather shown with a gap than with a wrong
 * letter.
 */
final class CharacterSet {

    static final CharacterSet DEFAULT = new CharacterSet(StandardCharsets.US_ASCII);

    private static final int ESCAPE = 0x1B;

    private static final Map<String, String> INITIAL = Map.ofEntries(
            Map.entry("6", "US-ASCII"),
            Map.entry("100", "ISO-8859-1"),
            Map.entry("101", "ISO-8859-2"),
            Map.entry("109", "ISO-8859-3"),
            Map.entry("110", "ISO-8859-4"),
            Map.entry("144", "ISO-8859-5"),
            Map.entry("127", "ISO-8859-6"),
            Map.entry("126", "ISO-8859-7"),
            Map.entry("138", "ISO-8859-8"),
            Map.entry("148", "ISO-8859-9"),
            Map.entry("203", "ISO-8859-15"),
            Map.entry("13", "JIS_X0201"),
            Map.entry("166", "TIS-620"),
            Map.entry("192", "UTF-8"));

    private static final List<Escape> ESCAPES = List.of(
            new Escape("(B", "US-ASCII", true),
            new Escape("(J", "US-ASCII", true),
            new Escape("$B", "x-JIS0208", true),
            new Escape("$(D", "JIS_X0212-1990", true),
            new Escape("$)C", "EUC-KR", false),
            new Escape("$)A", "GB2312", false),
            new Escape(")I", "JIS_X0201", false),
            new Escape("-A", "ISO-8859-1", false),
            new Escape("-B", "ISO-8859-2", false),
            new Escape("-C", "ISO-8859-3", false),
            new Escape("-D", "ISO-8859-4", false),
            new Escape("-L", "ISO-8859-5", false),
            new Escape("-G", "ISO-8859-6", false),
            new Escape("-F", "ISO-8859-7", false),
            new Escape("-H", "ISO-8859-8", false),
            new Escape("-M", "ISO-8859-9", false),
            new Escape("-b", "ISO-8859-15", false),
            new Escape("-T", "TIS-620", false));

    private final Charset initial;

    private CharacterSet(Charset initial) {
        this.initial = initial;
    }

    /** The set declared by the values of Specific Character Set; the default repertoire for names unknown here. */
    static CharacterSet of(List<String> names) {
        String first = names.isEmpty() ? "" : names.getFirst();
        return new CharacterSet(
                switch (first) {
                    case "GB18030" -> Charset.forName("GB18030");
                    case "GBK" -> Charset.forName("GBK");
                    default -> Charset.forName(INITIAL.getOrDefault(number(first), "US-ASCII"));
                });
    }

    String decode(ByteBuffer bytes) {
        StringBuilder text = new StringBuilder(bytes.remaining());
        Charset upper = initial;
        Charset lower = StandardCharsets.US_ASCII;
        while (bytes.hasRemaining()) {
            Optional<Escape> escape = escapeAt(bytes);
            if (escape.isPresent()) {
                Charset designated = Charset.forName(escape.get().charset);
                bytes.position(bytes.position() + 1 + escape.get().sequence.length());
                lower = escape.get().replacesLower ? designated : lower;
                upper = escape.get().replacesLower ? upper : designated;
            } else {
                Charset current = lower.equals(StandardCharsets.US_ASCII) ? upper : lower;
                text.append(decode(current, untilEscape(bytes)));
            }
        }
        return text.toString();
    }

    /** In JIS X 0201 the byte of the backslash is a yen sign; between values it parts them all the same. */
    private static String decode(Charset charset, ByteBuffer bytes) {
        String text = charset.decode(bytes).toString();
        return charset.name().equals("JIS_X0201") ? text.replace('\u00A5', '\\') : text;
    }

    private static Optional<Escape> escapeAt(ByteBuffer bytes) {
        return bytes.get(bytes.position()) == ESCAPE
                ? ESCAPES.stream().filter(escape -> escape.isAt(bytes)).findFirst()
                : Optional.empty();
    }

    /** The bytes up to the next known escape sequence; at least one byte. */
    private static ByteBuffer untilEscape(ByteBuffer bytes) {
        int start = bytes.position();
        int end = start;
        while (end < bytes.limit() && (end == start || bytes.get(end) != ESCAPE)) {
            end++;
        }
        bytes.position(end);
        return bytes.slice(start, end - start);
    }

    /** {@code ISO 2022 IR 87} and {@code ISO_IR 192} are told apart by their last number alone. */
    private static String number(String name) {
        return name.substring(name.lastIndexOf(' ') + 1);
    }

    /**
     * An escape sequence of PS3.3 tables C.12-3 and C.12-4.
     *
     * @param sequence the characters after ESC
     * @param charset the Java charset it switches to
     * @param replacesLower whether it is designated to G0 (bytes below 80H) or to G1
     */
    private record Escape(String sequence, String charset, boolean replacesLower) {

        boolean isAt(ByteBuffer bytes) {
            int start = bytes.position();
            if (bytes.remaining() <= sequence.length()) {
                return false;
            }
            for (int i = 0; i < sequence.length(); i++) {
                if (bytes.get(start + 1 + i) != sequence.charAt(i)) {
                    return false;
                }
            }
            return true;
        }
    }
}
