package org.espalier.film;

/** Why a file was not taken in. Nothing of it is kept; the sender still has it. */
public enum DoorReason {
    EMPTY,
    NOT_A_FILM,
    TOO_LARGE,
    QUOTA_REACHED,
    MALICIOUS,
    DISK_FULL,
    NOT_STORED
}
