package org.espalier.film;

/** Why a photo or clip was not kept. */
public enum PictureProblem {
    EMPTY,
    NOT_A_PICTURE,
    TOO_LARGE,
    TOO_LONG,
    LENGTH_UNKNOWN,
    BROKEN,
    MALICIOUS,
    DISK_FULL,
    NOT_STORED
}
