package org.espalier.film.internal.dicom;

import java.nio.ByteBuffer;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Collections;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The elements of a data set, in the order of their tags. A value that is missing, empty or not of its kind (letters in
 * a number) is absent: no getter guesses.
 */
public final class DataSet implements Iterable<Element> {

    private static final Pattern DATE = Pattern.compile("(\\d{4})\\.?(\\d{2})\\.?(\\d{2})");

    private final SortedMap<Tag, Element> elements;
    private final CharacterSet characterSet;

    DataSet(SortedMap<Tag, Element> elements, CharacterSet characterSet) {
        this.elements = Collections.unmodifiableSortedMap(new TreeMap<>(elements));
        this.characterSet = characterSet;
    }

    public Optional<Element> element(Tag tag) {
        return Optional.ofNullable(elements.get(tag));
    }

    @Override
    public Iterator<Element> iterator() {
        return elements.values().iterator();
    }

    /**
     * The text values of an element, padding removed; empty strings keep their place; empty list when there is none.
     */
    public List<String> strings(Tag tag) {
        return element(tag).map(element -> Values.texts(element, characterSet)).orElse(List.of());
    }

    /** The first text value; empty when it is missing or blank. */
    public Optional<String> string(Tag tag) {
        return strings(tag).stream().findFirst().filter(text -> !text.isEmpty());
    }

    /** The numbers of an element; empty list when there is none or one of them is not a finite number. */
    public List<Double> decimals(Tag tag) {
        return element(tag).map(Values::decimals).orElse(List.of());
    }

    /** The whole numbers of an element; empty list when there is none or one of them is not a whole number. */
    public List<Long> integers(Tag tag) {
        return element(tag).map(Values::integers).orElse(List.of());
    }

    /** The first whole number; empty when there is none or it does not fit in 32 bits. */
    public OptionalInt integer(Tag tag) {
        return integers(tag).stream()
                .limit(1)
                .filter(value -> value == value.intValue())
                .mapToInt(Long::intValue)
                .findFirst();
    }

    /** The first date; empty when there is none or no such day exists. */
    public Optional<LocalDate> date(Tag tag) {
        return string(tag).map(DATE::matcher).filter(Matcher::matches).flatMap(DataSet::toDate);
    }

    /** The items of a sequence; empty list when there are none. */
    public List<DataSet> items(Tag tag) {
        return element(tag).map(Element::value).orElse(null) instanceof Element.Items(List<DataSet> items)
                ? items
                : List.of();
    }

    /** The plain bytes of an element; empty when there are none or the value is a sequence. */
    public Optional<ByteBuffer> bytes(Tag tag) {
        return element(tag).map(Element::value).orElse(null) instanceof Element.Bytes value
                ? Optional.of(value.bytes())
                : Optional.empty();
    }

    private static Optional<LocalDate> toDate(Matcher parts) {
        try {
            return Optional.of(LocalDate.of(number(parts, 1), number(parts, 2), number(parts, 3)));
        } catch (DateTimeException e) {
            return Optional.empty();
        }
    }

    private static int number(Matcher parts, int group) {
        String digits = parts.group(group);
        return digits == null ? 0 : Integer.parseInt(digits);
    }
}
