package org.espalier.film.internal.dicom;

import java.io.Serial;

/** Carries a refusal from deep inside a parser or decoder to its entry point, which turns it into a result. */
final class RefusedException extends Exception {

    @Serial
    private static final long serialVersionUID = 1L;

    private final Refusal reason;
    private final String detail;

    RefusedException(Refusal reason, String detail) {
        super(reason + ": " + detail, null, false, false);
        this.reason = reason;
        this.detail = detail;
    }

    Refusal reason() {
        return reason;
    }

    String detail() {
        return detail;
    }
}
