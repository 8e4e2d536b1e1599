package org.espalier.film;

import java.io.Serial;
import org.springframework.http.HttpStatus;
import org.springframework.web.bind.annotation.ResponseStatus;

/** A film that was looked at before its picture was prepared turned out to have none; it will be kept aside. */
@ResponseStatus(HttpStatus.NOT_FOUND)
public final class NoPictureException extends RuntimeException {

    @Serial
    private static final long serialVersionUID = 1;

    NoPictureException(AsideReason reason) {
        super("no picture: " + reason);
    }
}
