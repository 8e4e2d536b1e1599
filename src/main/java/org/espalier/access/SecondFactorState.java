package org.espalier.access;

/**
 * The caller's codes.
 *
 * @param on whether a code is asked for at each sign-in by password
 * @param recoveryCodes how many are left
 */
public record SecondFactorState(boolean on, long recoveryCodes) {}
