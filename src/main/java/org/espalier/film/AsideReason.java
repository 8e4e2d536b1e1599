package org.espalier.film;

/** Why a film is kept aside instead of being shown. */
public enum AsideReason {
    /** The file ends before what it announces. */
    CUT_SHORT,
    /** The bytes contradict the file format. */
    BROKEN,
    /** Nested or inflated beyond what an honest film is. */
    UNSAFE,
    /** The pixels are encoded in a way that is not read here. */
    ENCODING_UNKNOWN,
    /** There is no picture in it, such as a report or a plan. */
    NO_PICTURE,
    /** The picture does not fit its own description. */
    PICTURE_CONTRADICTS,
    /** A kind of pixel no film has. */
    PICTURE_KIND_UNKNOWN,
    /** More pixels than are read here. */
    TOO_MANY_PIXELS,
    /** The compressed picture is damaged. */
    PICTURE_DAMAGED,
    /** It does not say which picture it is, so that it could not be told from another. */
    UNIDENTIFIED,
    /** Another film with the same instance number and another content came before. */
    SAME_NUMBER_OTHER_PICTURE,
    /** Preparing the picture failed again and again. */
    PREPARING_FAILED
}
