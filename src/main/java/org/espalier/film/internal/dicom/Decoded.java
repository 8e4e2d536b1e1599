package org.espalier.film.internal.dicom;

/** What came of decoding the pixels of a file. */
public sealed interface Decoded permits StoredImage, Decoded.Refused {

    /**
     * The pixels were not decoded.
     *
     * @param reason why
     * @param detail where and what, for the person who looks after the sending machine
     */
    record Refused(Refusal reason, String detail) implements Decoded {}
}
