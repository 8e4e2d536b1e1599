package org.espalier.access;

/**
 * What an authenticator app must be told, once.
 *
 * @param secret in Base32, to be typed
 * @param address the same with its names, to be shown as a picture
 */
public record SecondFactorSetUp(String secret, String address) {

    /** A secret never reaches a log. */
    @Override
    public String toString() {
        return "SecondFactorSetUp";
    }
}
