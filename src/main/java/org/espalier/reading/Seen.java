package org.espalier.reading;

/** Whether a reader saw something that was asked for. Nothing is yes by itself. */
public enum Seen {
    NOT_RECORDED,
    NO,
    YES
}
