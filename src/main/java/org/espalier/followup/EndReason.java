package org.espalier.followup;

/** Why care ended before the growth plates closed. */
public enum EndReason {
    STRAIGHT,
    ADULT_CARE,
    LEFT_NETWORK,
    DECLINED,
    DIED
}
