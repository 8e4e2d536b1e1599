package org.espalier.film.internal.dicom;

/** Why a file, or the picture in it, cannot be read. The file itself is kept whatever the reason. */
public enum Refusal {
    /** The storage did not give the bytes. */
    UNREADABLE,
    /** No DICOM prefix after the preamble: another kind of file, or a data set without its file header. */
    NOT_DICOM,
    /** The file ends before the data it announces. */
    TRUNCATED,
    /** The bytes contradict the file format. */
    MALFORMED,
    /** The file is longer than allowed. */
    FILE_TOO_LARGE,
    /** The compressed data set grows beyond what is allowed. */
    INFLATES_TOO_FAR,
    /** Sequences are nested deeper than allowed. */
    NESTED_TOO_DEEP,
    /** More elements than allowed. */
    TOO_MANY_ELEMENTS,
    /** The header does not say how the data are encoded. */
    TRANSFER_SYNTAX_MISSING,
    /** The data are encoded in a way that is not read here. */
    TRANSFER_SYNTAX_UNSUPPORTED,
    /** The file holds no picture. */
    NO_PIXEL_DATA,
    /** The description of the picture is missing, or contradicts itself or the picture. */
    PIXELS_DESCRIBED_WRONGLY,
    /** A kind of pixel that no film has, such as 1 bit, 32 bits or floating point. */
    PIXELS_UNSUPPORTED,
    /** More pixels than allowed. */
    TOO_MANY_PIXELS,
    /** Fewer pixel bytes than the picture needs. */
    PIXEL_DATA_SHORT,
    /** The compressed picture is broken. */
    CODE_STREAM_BROKEN
}
