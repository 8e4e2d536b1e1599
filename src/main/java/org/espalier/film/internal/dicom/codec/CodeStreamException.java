package org.espalier.film.internal.dicom.codec;

import java.io.Serial;

/** A code stream that cannot be decoded. */
public final class CodeStreamException extends Exception {

    @Serial
    private static final long serialVersionUID = 1L;

    public CodeStreamException(String message) {
        super(message, null, false, false);
    }
}
