package org.espalier.film.internal.dicom;

import java.nio.ByteBuffer;
import java.util.List;

/**
 * One data element.
 *
 * @param tag its tag
 * @param vr its value representation; for implicit encodings the registered one
 * @param value its value, still in the bytes of the file
 */
public record Element(Tag tag, Vr vr, Value value) {

    /** The value of an element. Buffers are read-only views of the file, in its byte order. */
    public sealed interface Value {}

    /** A value of plain bytes. */
    public record Bytes(ByteBuffer bytes) implements Value {

        @Override
        public ByteBuffer bytes() {
            return bytes.duplicate().order(bytes.order());
        }
    }

    /** The items of a sequence. */
    public record Items(List<DataSet> items) implements Value {}

    /**
     * Encapsulated pixel data (PS3.5 annex A.4).
     *
     * @param offsets the basic offset table, often empty
     * @param fragments the fragments of the compressed frames
     */
    public record Fragments(Bytes offsets, List<Bytes> fragments) implements Value {}
}
