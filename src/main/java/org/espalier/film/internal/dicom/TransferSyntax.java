package org.espalier.film.internal.dicom;

import java.nio.ByteOrder;
import java.util.Arrays;
import java.util.Optional;

/** How a data set and its pixels are encoded (PS3.5 section 10 and annex A, registered in PS3.6 annex A). */
public enum TransferSyntax {
    IMPLICIT_LITTLE_ENDIAN("1.2.840.10008.1.2"),
    EXPLICIT_LITTLE_ENDIAN("1.2.840.10008.1.2.1"),
    DEFLATED_EXPLICIT_LITTLE_ENDIAN("1.2.840.10008.1.2.1.99"),
    EXPLICIT_BIG_ENDIAN("1.2.840.10008.1.2.2"),
    JPEG_BASELINE("1.2.840.10008.1.2.4.50"),
    JPEG_EXTENDED("1.2.840.10008.1.2.4.51"),
    JPEG_LOSSLESS("1.2.840.10008.1.2.4.57"),
    JPEG_LOSSLESS_FIRST_ORDER("1.2.840.10008.1.2.4.70"),
    JPEG_LS_LOSSLESS("1.2.840.10008.1.2.4.80"),
    JPEG_LS_NEAR_LOSSLESS("1.2.840.10008.1.2.4.81"),
    JPEG_2000_LOSSLESS("1.2.840.10008.1.2.4.90"),
    JPEG_2000("1.2.840.10008.1.2.4.91"),
    RLE_LOSSLESS("1.2.840.10008.1.2.5"),
    /** An encapsulated encoding that is known to exist and whose pixels are not decoded here. */
    OTHER_ENCAPSULATED("");

    private static final String ENCAPSULATED_ROOT = "1.2.840.10008.1.2.4.";

    private final String uid;

    TransferSyntax(String uid) {
        this.uid = uid;
    }

    /**
     * The transfer syntax of a UID. Whatever else the standard registers beside the JPEG family is encapsulated in
     * explicit little endian, so that its tags can be read although its pixels cannot.
     *
     * @return empty when the UID is of no kind known here, so that not even the tags can be read
     */
    public static Optional<TransferSyntax> of(String uid) {
        return Arrays.stream(values())
                .filter(syntax -> syntax != OTHER_ENCAPSULATED && syntax.uid.equals(uid))
                .findFirst()
                .or(() -> uid.startsWith(ENCAPSULATED_ROOT) ? Optional.of(OTHER_ENCAPSULATED) : Optional.empty());
    }

    /** The registered UID; empty for {@link #OTHER_ENCAPSULATED}, whose UID stands in the file meta information. */
    public String uid() {
        return uid;
    }

    /** Whether pixels stand in fragments (PS3.5 annex A.4). */
    public boolean isEncapsulated() {
        return ordinal() >= JPEG_BASELINE.ordinal();
    }

    Encoding encoding() {
        return new Encoding(
                this != IMPLICIT_LITTLE_ENDIAN,
                this == EXPLICIT_BIG_ENDIAN ? ByteOrder.BIG_ENDIAN : ByteOrder.LITTLE_ENDIAN);
    }

    /**
     * How the elements of a data set are written.
     *
     * @param explicitVr whether each element names its value representation
     * @param order the byte order of numbers
     */
    record Encoding(boolean explicitVr, ByteOrder order) {
        static final Encoding META = new Encoding(true, ByteOrder.LITTLE_ENDIAN);
        static final Encoding IMPLICIT = new Encoding(false, ByteOrder.LITTLE_ENDIAN);
    }
}
