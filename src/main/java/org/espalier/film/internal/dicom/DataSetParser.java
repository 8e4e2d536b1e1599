package org.espalier.film.internal.dicom;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import org.espalier.film.internal.dicom.TransferSyntax.Encoding;

/** Parses the elements of data sets and sequences (PS3.5 section 7). */
final class DataSetParser {

    private static final long UNDEFINED = 0xFFFFFFFFL;

    private final Cursor cursor;
    private final Encoding encoding;
    private final int depthLimit;

    DataSetParser(Cursor cursor, Encoding encoding, Limits limits) {
        this(cursor, encoding, limits.depth());
    }

    private DataSetParser(Cursor cursor, Encoding encoding, int depthLimit) {
        this.cursor = cursor;
        this.encoding = encoding;
        this.depthLimit = depthLimit;
    }

    /** The elements of one group, up to the first of another. */
    DataSet group(int group) throws RefusedException {
        SortedMap<Tag, Element> elements = new TreeMap<>();
        while (cursor.position() < cursor.limit()) {
            int start = cursor.position();
            Tag tag = cursor.tag(encoding.order());
            if (tag.group() != group) {
                cursor.moveTo(start);
                break;
            }
            add(elements, element(tag, CharacterSet.DEFAULT, 0));
        }
        return new DataSet(elements, CharacterSet.DEFAULT);
    }

    /** All elements to the end of the bytes. */
    DataSet toEnd() throws RefusedException {
        return dataSet(cursor.limit(), false, CharacterSet.DEFAULT, 0);
    }

    private DataSet dataSet(int end, boolean delimited, CharacterSet inherited, int depth) throws RefusedException {
        SortedMap<Tag, Element> elements = new TreeMap<>();
        CharacterSet characterSet = inherited;
        while (cursor.position() < end) {
            Tag tag = cursor.tag(encoding.order());
            if (delimited && tag.equals(Tag.ITEM_END)) {
                cursor.unsignedInt(encoding.order());
                return new DataSet(elements, characterSet);
            }
            Element element = element(tag, characterSet, depth);
            add(elements, element);
            if (tag.equals(Tag.SPECIFIC_CHARACTER_SET)) {
                characterSet = CharacterSet.of(Values.texts(element, CharacterSet.DEFAULT));
            }
        }
        if (delimited || cursor.position() > end) {
            throw malformed(delimited ? "an item has no end" : "an element reaches beyond the end of its item");
        }
        return new DataSet(elements, characterSet);
    }

    private void add(SortedMap<Tag, Element> elements, Element element) throws RefusedException {
        if (elements.put(element.tag(), element) != null) {
            throw malformed(element.tag() + " stands twice");
        }
    }

    private Element element(Tag tag, CharacterSet characterSet, int depth) throws RefusedException {
        cursor.count();
        if (tag.group() == 0 || tag.group() == Tag.ITEM.group()) {
            throw malformed(tag + " has no place here");
        }
        Vr vr = encoding.explicitVr() ? explicitVr(tag) : DataElements.representation(tag);
        long length = length(vr);
        if (length == UNDEFINED) {
            return undefined(tag, vr, characterSet, depth);
        }
        if (vr == Vr.SQ) {
            cursor.need(length, tag);
            int end = cursor.position() + (int) length;
            return new Element(tag, vr, items(end, false, characterSet, depth + 1));
        }
        return new Element(tag, vr, new Element.Bytes(cursor.slice(length, encoding.order(), tag)));
    }

    private Vr explicitVr(Tag tag) throws RefusedException {
        int first = cursor.unsignedByte();
        int second = cursor.unsignedByte();
        return Vr.of(first, second).orElseThrow(() -> malformed(tag + " has an unknown value representation"));
    }

    private long length(Vr vr) throws RefusedException {
        if (!encoding.explicitVr()) {
            return cursor.unsignedInt(encoding.order());
        }
        if (!vr.hasLongLength()) {
            return cursor.unsignedShort(encoding.order());
        }
        cursor.unsignedShort(encoding.order());
        return cursor.unsignedInt(encoding.order());
    }

    /** An undefined length announces a sequence or fragments; UN then holds implicit VR (PS3.5 section 6.2.2). */
    private Element undefined(Tag tag, Vr vr, CharacterSet characterSet, int depth) throws RefusedException {
        if (tag.equals(Tag.PIXEL_DATA) && vr.kind() == Vr.Kind.BYTES) {
            return new Element(tag, vr, fragments());
        }
        return switch (vr) {
            case SQ -> new Element(tag, vr, items(cursor.limit(), true, characterSet, depth + 1));
            case UN -> {
                DataSetParser implicit = new DataSetParser(cursor, Encoding.IMPLICIT, depthLimit);
                yield new Element(tag, Vr.SQ, implicit.items(cursor.limit(), true, characterSet, depth + 1));
            }
            default -> throw malformed(tag + " has no length");
        };
    }

    private Element.Items items(int end, boolean delimited, CharacterSet characterSet, int depth)
            throws RefusedException {
        if (depth > depthLimit) {
            throw new RefusedException(
                    Refusal.NESTED_TOO_DEEP, "sequences nested deeper than " + depthLimit + " at " + at());
        }
        List<DataSet> items = new ArrayList<>();
        while (cursor.position() < end) {
            Tag tag = cursor.tag(encoding.order());
            long length = cursor.unsignedInt(encoding.order());
            if (delimited && tag.equals(Tag.SEQUENCE_END)) {
                return new Element.Items(List.copyOf(items));
            }
            items.add(item(tag, length, end, characterSet, depth));
        }
        if (delimited || cursor.position() > end) {
            throw malformed(delimited ? "a sequence has no end" : "an item reaches beyond the end of its sequence");
        }
        return new Element.Items(List.copyOf(items));
    }

    private DataSet item(Tag tag, long length, int end, CharacterSet characterSet, int depth) throws RefusedException {
        cursor.count();
        if (!tag.equals(Tag.ITEM)) {
            throw malformed(tag + " stands where an item should begin");
        }
        if (length == UNDEFINED) {
            return dataSet(end, true, characterSet, depth);
        }
        cursor.need(length, "an item");
        return dataSet(cursor.position() + (int) length, false, characterSet, depth);
    }

    /** Encapsulated pixel data: an offset table, then fragments (PS3.5 annex A.4). */
    private Element.Fragments fragments() throws RefusedException {
        List<Element.Bytes> all = new ArrayList<>();
        while (true) {
            Tag tag = cursor.tag(ByteOrder.LITTLE_ENDIAN);
            long length = cursor.unsignedInt(ByteOrder.LITTLE_ENDIAN);
            if (tag.equals(Tag.SEQUENCE_END)) {
                break;
            }
            if (!tag.equals(Tag.ITEM) || length == UNDEFINED) {
                throw malformed("a fragment of the picture does not begin as one");
            }
            cursor.count();
            all.add(new Element.Bytes(cursor.slice(length, ByteOrder.LITTLE_ENDIAN, "a fragment of the picture")));
        }
        Element.Bytes offsets = all.isEmpty() ? new Element.Bytes(ByteBuffer.allocate(0)) : all.removeFirst();
        return new Element.Fragments(offsets, List.copyOf(all));
    }

    private RefusedException malformed(String what) {
        return new RefusedException(Refusal.MALFORMED, what + " at " + at());
    }

    private String at() {
        return "byte " + cursor.position();
    }
}
