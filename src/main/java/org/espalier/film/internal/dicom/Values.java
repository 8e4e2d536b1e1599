package org.espalier.film.internal.dicom;

import java.nio.ByteBuffer;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Function;
import java.util.regex.Pattern;

/** Reads the values of an element out of its bytes (PS3.5 section 6.2). */
final class Values {

    /** Longer text is nobody's name and no description: it counts as absent and stays in the file. */
    private static final int LONGEST_TEXT = 1 << 16;

    private static final Pattern DECIMAL = Pattern.compile("[+-]?(\\d+(\\.\\d*)?|\\.\\d+)([eE][+-]?\\d{1,4})?");
    private static final Pattern INTEGER = Pattern.compile("[+-]?\\d{1,18}");

    private Values() {}

    static List<String> texts(Element element, CharacterSet characterSet) {
        if (!(element.value() instanceof Element.Bytes value) || value.bytes().remaining() > LONGEST_TEXT) {
            return List.of();
        }
        return switch (element.vr().kind()) {
            case TEXT -> split(decode(element.vr(), value.bytes(), characterSet));
            case PROSE -> prose(decode(element.vr(), value.bytes(), characterSet));
            case TAG -> tags(value.bytes());
            case NUMBER, BYTES, SEQUENCE -> List.of();
        };
    }

    static List<Double> decimals(Element element) {
        return switch (element.vr()) {
            case DS, IS ->
                parsed(element, DECIMAL, Double::valueOf).stream().allMatch(Double::isFinite)
                        ? parsed(element, DECIMAL, Double::valueOf)
                        : List.of();
            case FL -> numbers(element, Float.BYTES, bytes -> (double) bytes.getFloat());
            case FD -> numbers(element, Double.BYTES, ByteBuffer::getDouble);
            default -> integers(element).stream().map(Long::doubleValue).toList();
        };
    }

    static List<Long> integers(Element element) {
        return switch (element.vr()) {
            case IS -> parsed(element, INTEGER, Long::valueOf);
            case US -> numbers(element, Short.BYTES, bytes -> (long) Short.toUnsignedInt(bytes.getShort()));
            case SS -> numbers(element, Short.BYTES, bytes -> (long) bytes.getShort());
            case UL -> numbers(element, Integer.BYTES, bytes -> Integer.toUnsignedLong(bytes.getInt()));
            case SL -> numbers(element, Integer.BYTES, bytes -> (long) bytes.getInt());
            case SV, UV -> numbers(element, Long.BYTES, ByteBuffer::getLong);
            default -> List.of();
        };
    }

    private static String decode(Vr vr, ByteBuffer bytes, CharacterSet characterSet) {
        return (vr.followsCharacterSet() ? characterSet : CharacterSet.DEFAULT).decode(bytes);
    }

    private static List<String> split(String text) {
        String content = withoutPadding(text);
        return content.isBlank()
                ? List.of()
                : Arrays.stream(content.split("\\\\", -1))
                        .map(part -> withoutPadding(part).strip())
                        .toList();
    }

    private static List<String> prose(String text) {
        String content = withoutPadding(text);
        return content.isEmpty() ? List.of() : List.of(content);
    }

    private static String withoutPadding(String text) {
        int end = text.length();
        while (end > 0 && (text.charAt(end - 1) == ' ' || text.charAt(end - 1) == 0)) {
            end--;
        }
        return text.substring(0, end);
    }

    private static List<String> tags(ByteBuffer bytes) {
        List<String> tags = new ArrayList<>();
        while (bytes.remaining() >= 4) {
            int group = Short.toUnsignedInt(bytes.getShort());
            tags.add(new Tag(group << 16 | Short.toUnsignedInt(bytes.getShort())).toHex());
        }
        return tags;
    }

    private static <T> List<T> parsed(Element element, Pattern form, Function<String, T> parse) {
        List<String> texts = texts(element, CharacterSet.DEFAULT);
        return texts.stream().allMatch(text -> form.matcher(text).matches())
                ? texts.stream().map(parse).toList()
                : List.of();
    }

    private static <T> List<T> numbers(Element element, int size, Function<ByteBuffer, T> next) {
        if (!(element.value() instanceof Element.Bytes value)
                || value.bytes().remaining() % size != 0
                || value.bytes().remaining() > LONGEST_TEXT) {
            return List.of();
        }
        ByteBuffer bytes = value.bytes();
        List<T> numbers = new ArrayList<>();
        while (bytes.hasRemaining()) {
            numbers.add(next.apply(bytes));
        }
        return numbers;
    }
}
