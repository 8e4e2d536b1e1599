package org.espalier.access;

/** What an entry of the access log says was done. */
public enum AccessDeed {
    OPENED,
    LISTED,
    FILM,
    DENIED,
    SIGNED_IN,
    SIGN_IN_FAILED,
    MANAGED,
    EMERGENCY,
    REVIEWED
}
