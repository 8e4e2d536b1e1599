package org.espalier.access;

/**
 * The provider people sign in at once for several programs, where there is one.
 *
 * @param issuer the address it names itself by
 * @param name what people call it
 * @param start where signing in through it begins
 */
public record SingleSignOn(String issuer, String name, String start) {}
