package org.espalier.film.internal.dicom;

/** What came of reading a file. */
public sealed interface ReadResult {

    /**
     * The file was read to its last byte.
     *
     * @param file its header and data set
     */
    record Read(DicomFile file) implements ReadResult {}

    /**
     * The file was not read.
     *
     * @param reason why
     * @param detail where and what, for the person who looks after the sending machine
     */
    record Refused(Refusal reason, String detail) implements ReadResult {}
}
